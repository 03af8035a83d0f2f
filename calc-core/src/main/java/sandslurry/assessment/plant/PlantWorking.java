package sandslurry.assessment.plant;

import static sandslurry.fact.step.Equation.DEFINITION;

import sandslurry.assessment.plant.PlantResult.Accounts;
import sandslurry.assessment.plant.PlantResult.LiquorLimit;
import sandslurry.assessment.plant.PlantResult.ModeResult;
import sandslurry.design.plant.PlantSpec.PenSpec;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;
import sandslurry.plant.account.Pond;
import sandslurry.plant.account.StorageAccount;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.pen.Flush;
import sandslurry.plant.pen.Nennich2005;
import sandslurry.plant.pen.Pen;
import sandslurry.plant.pen.PenLoad;
import sandslurry.plant.unit.CycloneUnit;
import sandslurry.plant.unit.PlantUnit;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/** The working behind a plant. */
public final class PlantWorking {
  private static final String BALANCE = "balance of mass";
  private static final String NETWORK = "linear balance by LU decomposition";
  private static final String VOLUMES = "balance of volume";
  private static final String POND =
      "USDA-NRCS, Agricultural Waste Management Field Handbook, worksheet 10A-2";
  private static final Equation OTHERS =
      Equation.lookup(
          "m_o",
          "manure of heifers, calves and dry cows",
          "manure of a head, from the table of other cattle, times the heads",
          Kind.MASS_FLOW,
          "ASABE D384.2, from memory, unverified");
  private static final Equation EXCRETED =
      Equation.of(
          "m_e",
          "manure of all heads",
          "x (cows m_m + m_o)",
          Kind.MASS_FLOW,
          BALANCE,
          "x, cows, m_m kg/s, m_o kg/s");
  private static final Equation MASS =
      Equation.of(
          "m",
          "all that the pen makes, with the share x_r of its sand that reaches the plant",
          "m_e + x_r stalls m_b + Q_w rho_w",
          Kind.MASS_FLOW,
          BALANCE,
          "m_e kg/s, x_r, stalls, m_b kg/s, Q_w m3/s, rho_w kg/m3");
  private static final Equation SOLIDS =
      Equation.of(
          "TS",
          "sand-free total solids",
          "m_s / (m - m_sand)",
          Kind.PERCENT,
          DEFINITION,
          "m_s kg/s, m kg/s, m_sand kg/s");
  private static final Equation VOLUME =
      Equation.search(
          "Q",
          "volume of all that the pen makes",
          "sum over the constituents of mass over density",
          Kind.FLOW,
          "volumes add up",
          "m kg/s");
  private static final Equation DENSITY =
      Equation.of("rho", "density", "m/Q", Kind.DENSITY, DEFINITION, "m kg/s, Q m3/s");
  private static final Equation LIQUOR =
      Equation.of(
          "TS_1",
          "what the liquor thickens to",
          "S / (S + W)",
          Kind.PERCENT,
          "balance of the loop at rest; the recycle ratio cancels",
          "S kg/s, W kg/s");
  private static final Equation SOLVED =
      Equation.search(
          "TS_2",
          "what the liquor thickens to, by the network",
          "balance of each constituent in each unit, the shares of the units taken at their feeds",
          Kind.PERCENT,
          NETWORK);
  private static final Equation IMBALANCE =
      Equation.search(
          "r",
          "worst imbalance of a constituent, over what comes in",
          "all constituents in all units and in the whole; above 1e-9 a balance is refused",
          Kind.NUMBER,
          "conservation of mass");
  private static final Equation RECOVERED =
      Equation.search(
          "E",
          "sand recovered of the sand flushed",
          "sand in the streams for bedding over sand in all feeds",
          Kind.PERCENT,
          NETWORK);
  private static final Equation BOUGHT =
      Equation.of(
          "M",
          "sand bought when recovered sand is reused without end, fines counted",
          "B - B_r",
          Kind.MASS_PER_DAY,
          BALANCE,
          "B kg/s, B_r kg/s");
  private static final Equation NOT_BOUGHT =
      Equation.of(
          "eta",
          "share of the circulating sand that need not be bought",
          "1 - M/B",
          Kind.PERCENT,
          DEFINITION,
          "M kg/s, B kg/s");
  private static final Equation AS_NEW =
      Equation.search(
          "M_0",
          "sand bought if each class were caught as of new sand, fines left out",
          "bedded sand over the sum of each class's share over what of it is lost",
          Kind.MASS_PER_DAY,
          BALANCE,
          "B kg/s");
  private static final Equation TIME_CONSTANT =
      Equation.search(
          "tau",
          "time constant of the loop",
          "solids that the pits hold at rest over solids that come in and are not caught",
          Kind.DAYS,
          "balance of one mixed volume");
  private static final Equation POND_VOLUME =
      Equation.of(
          "V",
          "volume to the top",
          "4 Z^2 d^3/3 + Z L d^2 + Z W d^2 + W L d",
          Kind.VOLUME,
          POND,
          "Z, d m, L m, W m");
  private static final Equation FREEBOARD =
      Equation.of(
          "V_f",
          "volume of the freeboard",
          "V - (4 Z^2 (d - f)^3/3 + Z L (d - f)^2 + Z W (d - f)^2 + W L (d - f))",
          Kind.VOLUME,
          POND,
          "V m3, Z, d m, f m, L m, W m");
  private static final Equation STORM =
      Equation.of(
          "V_st",
          "volume of the storm on the top area",
          "h_st (L + 2 Z d) (W + 2 Z d)",
          Kind.VOLUME,
          POND,
          "h_st m, L m, Z, d m, W m");
  private static final Equation ROOM =
      Equation.of(
          "V_r",
          "room for liquid",
          "max(0, V - V_f - V_st - V_sand)",
          Kind.VOLUME,
          VOLUMES,
          "V m3, V_f m3, V_st m3, V_sand m3");
  private static final Equation DAYS =
      Equation.search(
          "t",
          "days of storage from the worst month on",
          "inflow, rain on the top area and evaporation from the surface at the level reached,"
              + " summed from each month until the room is full",
          Kind.DAYS,
          VOLUMES,
          "V_r m3");
  private static final Equation SETTLED =
      Equation.of(
          "V_s",
          "sand that settles in a year, in bulk",
          "m_sand * 365 * 86400 / (rho_s (1 - p))",
          Kind.VOLUME,
          BALANCE,
          "m_sand kg/s, rho_s kg/m3, p");

  private static final Equation FLUSH_RADIUS =
      Equation.of(
          "R",
          "hydraulic radius of the flush",
          "b h / (b + 2 h)",
          Kind.BORE,
          "geometry",
          "b m, h m");
  private static final Equation FLUSH_VELOCITY =
      Equation.of(
          "V",
          "velocity of the flush",
          "R^(2/3) S^(1/2)/n",
          Kind.VELOCITY,
          "Manning 1891",
          "R m, S, n");
  private static final Equation FLUSH_WAVE =
      Equation.of("L_w", "length of the wave", "V t", Kind.LENGTH, DEFINITION, "V m/s, t s");
  private static final Equation FLUSH_STRESS =
      Equation.of(
          "tau",
          "stress on the floor",
          "rho g R S",
          Kind.STRESS,
          "balance of forces",
          "rho kg/m3, R m, S");

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
      if (unit instanceof CycloneUnit cyclone) {
        trace.begin("hydrocyclone " + unit.name(), "");
        PlantUnits.cyclone(model, cyclone, cyclone.model(), balance.feed(unit.name()))
            .ifPresent(
                seen ->
                    cyclone.model().performance(cyclone.cyclone().geometry(), seen.feed(), trace));
      }
    }
    for (PenSpec pen : model.spec().pens()) {
      pen.flush()
          .ifPresent(
              flush -> {
                trace.begin("flush of pen " + pen.pen().name(), "");
                flush(trace, flush.flush(), PlantUnits.water(model).densityKgM3());
              });
    }
  }

  private static void flush(Trace trace, Flush flush, double density) {
    double width = flush.alley().widthM();
    double depth = flush.depthM();
    double slope = flush.alley().slope();
    double radius = trace.step(FLUSH_RADIUS, flush.alley().hydraulicRadiusM(depth), width, depth);
    double velocity =
        trace.step(FLUSH_VELOCITY, flush.velocityMps(), radius, slope, flush.alley().manningN());
    trace.step(FLUSH_WAVE, flush.waveM(), velocity, flush.durationS());
    trace.step(FLUSH_STRESS, flush.stressPa(density), density, radius, slope);
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
        trace.step(STORM, account.stormVolumeM3(), account.stormM(), length, slope, depth, width);
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
