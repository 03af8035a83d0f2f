package sandslurry.assessment.plant;

import sandslurry.assessment.plant.PlantResult.Accounts;
import sandslurry.assessment.plant.PlantResult.LiquorLimit;
import sandslurry.assessment.plant.PlantResult.ModeResult;
import sandslurry.design.plant.PlantSpec.PenSpec;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Equations;
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
import sandslurry.units.Kind;

/** The working behind a plant. */
public final class PlantWorking {
  private static final Equations EQUATIONS = Equations.of(PlantWorking.class);
  private static final Equation OTHERS = EQUATIONS.of("others", Kind.MASS_FLOW);
  private static final Equation EXCRETED = EQUATIONS.of("excreted", Kind.MASS_FLOW);
  private static final Equation MASS = EQUATIONS.of("mass", Kind.MASS_FLOW);
  private static final Equation SOLIDS = EQUATIONS.of("solids", Kind.PERCENT);
  private static final Equation VOLUME = EQUATIONS.of("volume", Kind.FLOW);
  private static final Equation DENSITY = EQUATIONS.of("density", Kind.DENSITY);
  private static final Equation LIQUOR = EQUATIONS.of("liquor", Kind.PERCENT);
  private static final Equation SOLVED = EQUATIONS.of("solved", Kind.PERCENT);
  private static final Equation IMBALANCE = EQUATIONS.of("imbalance", Kind.NUMBER);
  private static final Equation RECOVERED = EQUATIONS.of("recovered", Kind.PERCENT);
  private static final Equation BOUGHT = EQUATIONS.of("bought", Kind.MASS_PER_DAY);
  private static final Equation NOT_BOUGHT = EQUATIONS.of("not-bought", Kind.PERCENT);
  private static final Equation AS_NEW = EQUATIONS.of("as-new", Kind.MASS_PER_DAY);
  private static final Equation TIME_CONSTANT = EQUATIONS.of("time-constant", Kind.DAYS);
  private static final Equation POND_VOLUME = EQUATIONS.of("pond-volume", Kind.VOLUME);
  private static final Equation FREEBOARD = EQUATIONS.of("freeboard", Kind.VOLUME);
  private static final Equation STORM = EQUATIONS.of("storm", Kind.VOLUME);
  private static final Equation ROOM = EQUATIONS.of("room", Kind.VOLUME);
  private static final Equation DAYS = EQUATIONS.of("days", Kind.DAYS);
  private static final Equation SETTLED = EQUATIONS.of("settled", Kind.VOLUME);

  private PlantWorking() {}

  /**
   * Keeps the steps of pens, units and accounts.
   *
   * @param trace what keeps the steps
   * @param model the plant
   * @param result what came of it
   */
  public static void tell(Trace trace, PlantModel model, PlantResult result) {
    for (int i = 0; i < model.spec().pens().size(); i++) {
      PenLoad load = result.loads().get(i);
      trace.begin("pen", load.name());
      pen(trace, model, model.spec().pens().get(i), load);
    }
    for (ModeResult mode : result.modes()) {
      trace.begin("liquor", mode.mode().name());
      mode.liquor().ifPresent(liquor -> mode(trace, mode, liquor));
    }
    result.main().balance().ifPresent(balance -> units(trace, model, balance));
    result
        .accounts()
        .ifPresent(
            accounts -> {
              trace.begin("sand account", "");
              sand(trace, accounts);
              accounts
                  .storages()
                  .forEach(
                      (name, storage) -> {
                        trace.begin("storage", name);
                        storage(trace, storage);
                      });
            });
  }

  /** The steps of the units whose kernels keep them, at their feed in the longest mode. */
  private static void units(Trace trace, PlantModel model, SteadyBalance balance) {
    for (PlantUnit unit : model.spec().units()) {
      model.at(unit, balance).tell(trace);
    }
    for (PenSpec pen : model.spec().pens()) {
      if (pen.flush().isPresent()) {
        new AlleyFlush(model, pen).tell(trace);
      }
    }
  }

  private static void pen(Trace trace, PlantModel model, PenSpec spec, PenLoad load) {
    Pen pen = spec.pen();
    double ofCow = model.spec().production().manureKgps(pen.milkKgps()).value();
    if (pen.cows() > 0) {
      model.spec().production().manureKgps(pen.milkKgps(), trace);
      Nennich2005.dryMatterKgps(pen.milkKgps(), trace);
    }
    double others =
        pen.others().entrySet().stream()
            .mapToDouble(other -> other.getValue() * other.getKey().manureKgps())
            .sum();
    Stream flow = load.meanFlow();
    trace.step(OTHERS, others);
    double factor = pen.manureFactor().base();
    double excreted = factor * (pen.cows() * ofCow + others);
    trace.step(EXCRETED, excreted, factor, pen.cows(), ofCow, others);
    Constituents constituents = flow.constituents();
    double mass =
        trace.step(
            MASS,
            flow.massKgps(),
            excreted,
            model.spec().accounting().sandReachingPlant().base(),
            pen.stalls(),
            pen.sandKgps().base(),
            pen.waterM3ps().base(),
            constituents.waterDensityKgM3());
    if (mass > flow.sandKgps()) {
      trace.step(SOLIDS, flow.totalSolids(), flow.solidsKgps(), mass, flow.sandKgps());
    }
    double volume = trace.step(VOLUME, flow.volumeM3ps(), mass);
    trace.step(DENSITY, flow.densityKgM3(), mass, volume);
  }

  private static void mode(Trace trace, ModeResult mode, LiquorLimit liquor) {
    trace.step(LIQUOR, liquor.analytic(), liquor.solidsNotCaughtKgps(), liquor.netWaterKgps());
    trace.step(SOLVED, liquor.solved());
    // Below the rounding of a double it is no number to compare.
    mode.balance().ifPresent(b -> trace.step(IMBALANCE, b.imbalance() < 1e-12 ? 0 : b.imbalance()));
    trace.step(RECOVERED, liquor.sandCapture());
  }

  private static void sand(Trace trace, Accounts accounts) {
    accounts
        .circulation()
        .ifPresent(
            rest -> {
              double bedded =
                  rest.bedded().sandKgps() + rest.bedded().kgps(Constituents.MINERAL_FINES);
              double back =
                  rest.rebedded().sandKgps() + rest.rebedded().kgps(Constituents.MINERAL_FINES);
              double bought = trace.step(BOUGHT, bedded - back, bedded, back);
              trace.step(NOT_BOUGHT, rest.notBought(), bought, bedded);
            });
    trace.step(AS_NEW, accounts.cycle().boughtKgps(), accounts.cycle().beddedKgps());
    if (accounts.timeConstantS().isPresent()) {
      trace.step(TIME_CONSTANT, accounts.timeConstantS().getAsDouble());
    }
  }

  private static void storage(Trace trace, StorageAccount account) {
    Pond pond = account.pond();
    double slope = pond.sideSlope();
    double depth = pond.depthM();
    double length = pond.floorLengthM();
    double width = pond.floorWidthM();
    double volume = trace.step(POND_VOLUME, pond.volumeM3(), slope, depth, length, width);
    double freeboard =
        trace.step(
            FREEBOARD,
            account.freeboardVolumeM3(),
            volume,
            slope,
            depth,
            account.freeboardM(),
            length,
            width);
    double storm =
        trace.step(
            STORM,
            account.stormVolumeM3(),
            account.stormM(),
            length,
            slope,
            depth,
            width,
            account.runoffAreaM2());
    double room =
        trace.step(ROOM, account.roomM3(), volume, freeboard, storm, account.settledSandM3());
    if (account.daysOfStorage().isPresent()) {
      trace.step(DAYS, InUnit.ofDays(account.daysOfStorage().getAsDouble()), room);
    }
    trace.step(
        SETTLED,
        account.sandPerYearM3(),
        account.sandKgps(),
        account.sandDensityKgM3(),
        account.porosity());
  }
}
