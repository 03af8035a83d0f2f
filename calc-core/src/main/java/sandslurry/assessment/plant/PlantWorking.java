package sandslurry.assessment.plant;

import sandslurry.assessment.plant.PlantResult.Accounts;
import sandslurry.assessment.plant.PlantResult.LiquorLimit;
import sandslurry.assessment.plant.PlantResult.ModeResult;
import sandslurry.design.plant.PlantSpec.PenSpec;
import sandslurry.fact.step.Sheet;
import sandslurry.fact.step.Trace;
import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;
import sandslurry.plant.account.Pond;
import sandslurry.plant.account.StorageAccount;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.pen.Nennich2005;
import sandslurry.plant.pen.Pen;
import sandslurry.plant.pen.PenLoad;
import sandslurry.plant.unit.PlantUnit;
import sandslurry.units.InUnit;

/** The working behind a plant. */
public final class PlantWorking {

  private PlantWorking() {}

  /**
   * Keeps the steps of pens, units and accounts.
   *
   * @param trace what keeps the steps
   * @param model the plant
   * @param result what came of it
   */
  public static void steps(Trace trace, PlantModel model, PlantResult result) {
    Sheet sheet = Sheet.of(PlantWorking.class, trace);
    for (int i = 0; i < model.spec().pens().size(); i++) {
      PenLoad load = result.loads().get(i);
      sheet.begin("pen", load.name());
      pen(sheet, model, model.spec().pens().get(i), load);
    }
    for (ModeResult mode : result.modes()) {
      sheet.begin("liquor", mode.mode().name());
      mode.liquor().ifPresent(liquor -> mode(sheet, mode, liquor));
    }
    result.main().balance().ifPresent(balance -> units(sheet, model, balance));
    result
        .accounts()
        .ifPresent(
            accounts -> {
              sheet.begin("sand account", "");
              sand(sheet, accounts);
              accounts
                  .storages()
                  .forEach(
                      (name, storage) -> {
                        sheet.begin("storage", name);
                        storage(sheet, storage);
                      });
            });
  }

  /** The steps of the units whose kernels keep them, at their feed in the longest mode. */
  private static void units(Sheet sheet, PlantModel model, SteadyBalance balance) {
    for (PlantUnit unit : model.spec().units()) {
      model.at(unit, balance).steps(sheet.trace());
    }
    for (PenSpec pen : model.spec().pens()) {
      if (pen.flush().isPresent()) {
        new AlleyFlush(model, pen).steps(sheet.trace());
      }
    }
  }

  private static void pen(Sheet sheet, PlantModel model, PenSpec spec, PenLoad load) {
    Pen pen = spec.pen();
    double ofCow = model.spec().production().manureKgps(pen.milkKgps()).value();
    if (pen.cows() > 0) {
      model.spec().production().manureKgps(pen.milkKgps(), sheet.trace());
      Nennich2005.dryMatterKgps(pen.milkKgps(), sheet.trace());
    }
    double others =
        pen.others().entrySet().stream()
            .mapToDouble(other -> other.getValue() * other.getKey().manureKgps())
            .sum();
    Stream flow = load.meanFlow();
    sheet.step("others", others);
    double factor = pen.manureFactor().base();
    double excreted = factor * (pen.cows() * ofCow + others);
    sheet.step("excreted", excreted, factor, pen.cows(), ofCow, others);
    Constituents constituents = flow.constituents();
    double mass =
        sheet.step(
            "mass",
            flow.massKgps(),
            excreted,
            model.spec().accounting().sandReachingPlant().base(),
            pen.stalls(),
            pen.sandKgps().base(),
            pen.waterM3ps().base(),
            constituents.waterDensityKgM3());
    if (mass > flow.sandKgps()) {
      sheet.step("solids", flow.totalSolids(), flow.solidsKgps(), mass, flow.sandKgps());
    }
    double volume = sheet.step("volume", flow.volumeM3ps(), mass);
    sheet.step("density", flow.densityKgM3(), mass, volume);
  }

  private static void mode(Sheet sheet, ModeResult mode, LiquorLimit liquor) {
    sheet.step("liquor", liquor.analytic(), liquor.solidsNotCaughtKgps(), liquor.netWaterKgps());
    sheet.step("solved", liquor.solved());
    // Below the rounding of a double it is no number to compare.
    mode.balance()
        .ifPresent(b -> sheet.step("imbalance", b.imbalance() < 1e-12 ? 0 : b.imbalance()));
    sheet.step("recovered", liquor.sandCapture());
  }

  private static void sand(Sheet sheet, Accounts accounts) {
    accounts
        .circulation()
        .sand()
        .ifPresent(
            rest -> {
              double bedded =
                  rest.bedded().sandKgps() + rest.bedded().kgps(Constituents.MINERAL_FINES);
              double back =
                  rest.rebedded().sandKgps() + rest.rebedded().kgps(Constituents.MINERAL_FINES);
              double bought = sheet.step("bought", bedded - back, bedded, back);
              sheet.step("not-bought", rest.notBought(), bought, bedded);
            });
    sheet.step(
        "as-new",
        accounts.circulation().asNew().boughtKgps(),
        accounts.circulation().asNew().beddedKgps());
    if (accounts.liquor().timeConstantS().isPresent()) {
      sheet.step("time-constant", accounts.liquor().timeConstantS().getAsDouble());
    }
  }

  private static void storage(Sheet sheet, StorageAccount account) {
    Pond pond = account.pond();
    double slope = pond.sideSlope();
    double depth = pond.depthM();
    double length = pond.floorLengthM();
    double width = pond.floorWidthM();
    double volume = sheet.step("pond-volume", pond.volumeM3(), slope, depth, length, width);
    double freeboard =
        sheet.step(
            "freeboard",
            account.freeboardVolumeM3(),
            volume,
            slope,
            depth,
            account.freeboardM(),
            length,
            width);
    double storm =
        sheet.step(
            "storm",
            account.stormVolumeM3(),
            account.stormM(),
            length,
            slope,
            depth,
            width,
            account.runoffAreaM2());
    double room =
        sheet.step("room", account.roomM3(), volume, freeboard, storm, account.settledSandM3());
    if (account.daysOfStorage().isPresent()) {
      sheet.step("days", InUnit.DAY.si(account.daysOfStorage().getAsDouble()), room);
    }
    sheet.step(
        "settled",
        account.sandPerYearM3(),
        account.sandKgps(),
        account.sandDensityKgM3(),
        account.porosity());
  }
}
