package sandslurry.assessment.plant;

import static sandslurry.correlation.Working.in;

import java.util.ArrayList;
import java.util.List;
import sandslurry.assessment.plant.PlantResult.LiquorLimit;
import sandslurry.assessment.plant.PlantResult.ModeResult;
import sandslurry.correlation.Working;
import sandslurry.design.plant.PlantSpec.PenSpec;
import sandslurry.fact.step.Step;
import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;
import sandslurry.plant.pen.Nennich2005;
import sandslurry.plant.pen.PenLoad;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/** The working behind a plant. */
public final class PlantWorking {
  private PlantWorking() {}

  public static List<Step> steps(PlantModel model, PlantResult result) {
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < model.spec().pens().size(); i++) {
      steps.addAll(pen(model, model.spec().pens().get(i), result.loads().get(i)));
    }
    for (ModeResult mode : result.modes()) {
      mode.liquor().ifPresent(liquor -> steps.addAll(mode(mode, liquor)));
    }
    result.accounts().ifPresent(accounts -> steps.addAll(sand(accounts)));
    result
        .accounts()
        .ifPresent(
            accounts -> accounts.storages().forEach((name, s) -> steps.addAll(storage(name, s))));
    result
        .units()
        .forEach(
            (name, figures) -> {
              Working w = new Working(name);
              for (Figure figure : figures) {
                w.step(
                    "x",
                    figure.what(),
                    "by the kernel of the unit, at its feed in the longest mode",
                    figure.kind(),
                    figure.range().base(),
                    "theory page on separation units");
              }
              steps.addAll(w.steps());
            });
    return steps;
  }

  private static List<Step> pen(PlantModel model, PenSpec spec, PenLoad load) {
    Working w = new Working("pen " + load.name());
    double milk = spec.pen().milkKgps();
    if (spec.pen().cows() > 0) {
      w.step(
          "m_m",
          "manure of a cow",
          model.spec().production(),
          Kind.MASS_PER_HEAD,
          model.spec().production().manureKgps(milk).value(),
          in("M", Kind.MASS_PER_HEAD, milk));
      w.step(
          "m_d",
          "dry matter in the manure of a cow",
          "linear in the milk yield",
          Kind.MASS_PER_HEAD,
          Nennich2005.dryMatterKgps(milk).value(),
          "Nennich and others (2005)",
          in("M", Kind.MASS_PER_HEAD, milk));
    }
    Stream flow = load.meanFlow();
    double mass =
        w.step(
            "m",
            "all that the pen makes",
            "m = manure of all heads + sand of all stalls + water",
            Kind.MASS_FLOW,
            flow.massKgps(),
            "balance of mass",
            in("cows", Kind.NUMBER, spec.pen().cows()),
            in("stalls", Kind.NUMBER, spec.pen().stalls()),
            in("sand a stall", Kind.MASS_PER_HEAD, spec.pen().sandKgps().base()),
            in("water", Kind.FLOW, spec.pen().waterM3ps().base()));
    w.step(
        "TS",
        "sand-free total solids",
        "TS = solids without sand / (m - sand)",
        Kind.PERCENT,
        flow.totalSolids(),
        "definition",
        in("solids", Kind.MASS_FLOW, flow.solidsKgps()),
        in("m", Kind.MASS_FLOW, mass),
        in("sand", Kind.MASS_FLOW, flow.sandKgps()));
    w.step(
        "rho",
        "density",
        "rho = m / sum of (constituent / its density)",
        Kind.DENSITY,
        flow.densityKgM3(),
        "volumes add up",
        in("m", Kind.MASS_FLOW, mass),
        in("Q", Kind.FLOW, flow.volumeM3ps()));
    return w.steps();
  }

  private static List<Step> mode(ModeResult mode, LiquorLimit liquor) {
    Working w = new Working("mode " + mode.mode().name());
    w.step(
        "TS",
        "what the liquor thickens to",
        "TS = S / (S + W)",
        Kind.PERCENT,
        liquor.analytic(),
        "balance of the loop at rest; the recycle ratio cancels",
        in("S", Kind.MASS_FLOW, liquor.solidsNotCaughtKgps()),
        in("W", Kind.MASS_FLOW, liquor.netWaterKgps()));
    w.step(
        "TS",
        "the same by the network",
        "f = e + S^T f for each constituent, shares asked anew until the feeds rest",
        Kind.PERCENT,
        liquor.solved(),
        "linear balance by LU decomposition; theory page on the closed loop");
    mode.balance()
        .ifPresent(
            balance -> {
              w.step(
                  "r",
                  "worst imbalance of a constituent in a unit or in the whole",
                  "r = |in - out| / in",
                  Kind.NUMBER,
                  // Below the rounding of a double it is no number to compare.
                  balance.imbalance() < 1e-12 ? 0 : balance.imbalance(),
                  "conservation; a balance is refused above 1e-9");
            });
    w.step(
        "E",
        "sand recovered of the sand flushed",
        "E = sand in the streams for bedding / sand in all feeds",
        Kind.PERCENT,
        liquor.sandCapture(),
        "definition");
    return w.steps();
  }

  private static List<Step> sand(PlantResult.Accounts accounts) {
    Working w = new Working("sand account");
    accounts
        .circulation()
        .ifPresent(
            rest -> {
              double bedded =
                  rest.bedded().sandKgps() + rest.bedded().kgps(Constituents.MINERAL_FINES);
              double back =
                  rest.rebedded().sandKgps() + rest.rebedded().kgps(Constituents.MINERAL_FINES);
              w.step(
                  "M",
                  "sand bought when sand is bedded again and again, fines counted",
                  "bedded_i = M f_i + rebedded_i for each class, the units asked anew with the"
                      + " bedding until it rests",
                  Kind.MASS_PER_DAY,
                  bedded - back,
                  "balance of each class",
                  in("bedded", Kind.MASS_FLOW, bedded),
                  in("rebedded", Kind.MASS_FLOW, back));
              w.step(
                  "eta",
                  "share of the sand that circulates that need not be bought",
                  "eta = 1 - M / bedded",
                  Kind.PERCENT,
                  rest.notBought(),
                  "definition",
                  in("M", Kind.MASS_FLOW, bedded - back),
                  in("bedded", Kind.MASS_FLOW, bedded));
            });
    w.step(
        "M_0",
        "the same if each class were caught as of new sand, fines left out",
        "M_0 = B / sum of f_i / (1 - eta_i)",
        Kind.MASS_PER_DAY,
        accounts.cycle().boughtKgps(),
        "balance of each class",
        in("B", Kind.MASS_FLOW, accounts.cycle().beddedKgps()));
    accounts
        .timeConstantS()
        .ifPresent(
            tau ->
                w.step(
                    "tau",
                    "time constant of the loop",
                    "tau = solids held in the pits at rest / solids not caught",
                    Kind.DAYS,
                    tau,
                    "balance of one mixed volume"));
    return w.steps();
  }

  private static List<Step> storage(String name, sandslurry.plant.account.StorageAccount account) {
    Working w = new Working(name);
    w.step(
        "V",
        "volume to the top",
        "V = 4 Z^2 d^3 / 3 + Z L d^2 + Z W d^2 + W L d",
        Kind.VOLUME,
        account.pond().volumeM3(),
        "USDA-NRCS, Agricultural Waste Management Field Handbook, worksheet 10A-2",
        in("L", Kind.LENGTH, account.pond().floorLengthM()),
        in("W", Kind.LENGTH, account.pond().floorWidthM()),
        in("Z", Kind.NUMBER, account.pond().sideSlope()),
        in("d", Kind.LENGTH, account.pond().depthM()));
    w.step(
        "V_r",
        "room for liquid",
        "V_r = V - freeboard - storm - sand there now",
        Kind.VOLUME,
        account.roomM3(),
        "balance of volume",
        in("freeboard", Kind.VOLUME, account.freeboardVolumeM3()),
        in("storm", Kind.VOLUME, account.stormVolumeM3()),
        in("sand", Kind.VOLUME, account.settledSandM3()));
    account
        .daysOfStorage()
        .ifPresent(
            days ->
                w.step(
                    "t",
                    "days of storage from the worst month on",
                    "inflow + rain on the top area - evaporation from the surface at the level"
                        + " reached, summed until V_r is full",
                    Kind.DAYS,
                    InUnit.ofDays(days),
                    "balance of volume"));
    w.step(
        "V_s",
        "sand that settles in a year, in bulk",
        "V_s = sand / (rho_s (1 - porosity))",
        Kind.VOLUME,
        account.sandPerYearM3(),
        "balance of mass",
        in("sand", Kind.MASS_FLOW, account.sandKgps()),
        in("rho_s", Kind.DENSITY, account.sandDensityKgM3()),
        in("porosity", Kind.NUMBER, account.porosity()));
    return w.steps();
  }
}
