package sandslurry.assessment.plant;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sandslurry.assessment.plant.PlantModel.Case;
import sandslurry.assessment.plant.PlantResult.Basis;
import sandslurry.assessment.plant.PlantResult.Compared;
import sandslurry.assessment.plant.PlantResult.ModeResult;
import sandslurry.design.plant.PlantSpec.ModeSpec;
import sandslurry.design.plant.PlantSpec.Use;
import sandslurry.plant.Stream;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.schedule.Day;
import sandslurry.plant.schedule.DayRun;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/**
 * The mean flows of a day that the accounts are kept over: those of the day by schedule once it
 * repeats itself, else those of the modes at their own steady states, weighted by their hours.
 *
 * @param streams the flows
 * @param atRest the flows of the modes at rest, weighted by their hours
 * @param basis which of them the streams are, and why
 */
public record PlantDay(Map<String, Stream> streams, Map<String, Stream> atRest, Basis basis) {
  /**
   * A day repeats itself when nothing that leaves differs from the day before by more than this
   * share of what comes in (own choice, no source).
   */
  public static final double REPEATS = 1e-3;

  /**
   * Nor is more than this share of any constituent that comes in kept or given off by the pits, or
   * spilled (own choice, no source).
   */
  public static final double KEPT = 5e-3;

  /**
   * The mean day of a plant.
   *
   * @param model the plant
   * @param modes each mode at its steady state
   * @param run the day by schedule
   * @return the flows, with what they are based on
   */
  public static PlantDay of(PlantModel model, List<ModeResult> modes, DayRun run) {
    Map<ModeSpec, SteadyBalance> balances = new LinkedHashMap<>();
    modes.forEach(mode -> balances.put(mode.mode(), mode.balance().orElseThrow()));
    Map<String, Stream> atRest = weighted(model, balances);
    List<Day> days = run.days();
    if (run.stopped().isPresent() || days.size() < 2) {
      return new PlantDay(
          atRest,
          atRest,
          new Basis(
              false,
              days.size(),
              0,
              0,
              "The day by schedule cannot be run to its end, so the modes are taken at steady"
                  + " state.",
              List.of(),
              Optional.empty(),
              List.of()));
    }
    Day last = days.get(days.size() - 1);
    Day before = days.get(days.size() - 2);
    double change = change(model, before, last);
    double kept = kept(model, last);
    List<Compared> compared = compared(model.totals(), last.meanFlows(), atRest);
    boolean repeats = change <= REPEATS && Math.abs(kept) <= KEPT;
    return new PlantDay(
        repeats ? last.meanFlows() : atRest,
        atRest,
        new Basis(
            repeats,
            last.number(),
            change,
            kept,
            repeats
                ? "The day by schedule repeats itself."
                : "The day by schedule does not repeat itself by then, so the modes are taken at"
                    + " rest.",
            compared,
            Optional.empty(),
            List.of()));
  }

  private static double change(PlantModel model, Day before, Day last) {
    Stream in = model.totals().sum(last.meanFlows(), model.totals().feeds());
    double worst = 0;
    for (String name : model.totals().leavingNames()) {
      for (int i = 0; i < model.constituents().count(); i++) {
        if (in.kgps(i) > 0) {
          double step = last.meanFlows().get(name).kgps(i) - before.meanFlows().get(name).kgps(i);
          worst = Math.max(worst, Math.abs(step) / in.kgps(i));
        }
      }
    }
    return worst;
  }

  /** What stays in the pits or is spilled of the constituent of which that is most. */
  private static double kept(PlantModel model, Day last) {
    Stream in = model.totals().sum(last.meanFlows(), model.totals().feeds());
    Stream out = model.totals().leaving(last.meanFlows());
    double worst = 0;
    for (int i = 0; i < model.constituents().count(); i++) {
      if (in.kgps(i) > 0) {
        double share = 1 - out.kgps(i) / in.kgps(i);
        worst = Math.abs(share) > Math.abs(worst) ? share : worst;
      }
    }
    return worst;
  }

  private static List<Compared> compared(
      PlantTotals totals, Map<String, Stream> day, Map<String, Stream> rest) {
    List<String> sand = totals.products(Use.BEDDING);
    List<String> surplus = totals.surplus();
    return List.of(
        new Compared(
            "recovery of the sand flushed",
            Kind.PERCENT,
            totals.capture(day),
            totals.capture(rest)),
        new Compared(
            "sand recovered",
            Kind.MASS_PER_DAY,
            totals.sum(day, sand).sandKgps(),
            totals.sum(rest, sand).sandKgps()),
        new Compared(
            "organic matter in the dry matter of recovered sand",
            Kind.PERCENT,
            totals.sum(day, sand).organicShareOfDry(),
            totals.sum(rest, sand).organicShareOfDry()),
        new Compared(
            "sand in the surplus",
            Kind.MASS_PER_DAY,
            totals.sum(day, surplus).sandKgps(),
            totals.sum(rest, surplus).sandKgps()),
        new Compared(
            "surplus",
            Kind.FLOW,
            totals.sum(day, surplus).volumeM3ps(),
            totals.sum(rest, surplus).volumeM3ps()),
        new Compared(
            "solids of the surplus",
            Kind.PERCENT,
            totals.sum(day, surplus).totalSolids(),
            totals.sum(rest, surplus).totalSolids()));
  }

  /**
   * The steady balances of all modes in a case.
   *
   * @param model the plant
   * @param one the case
   * @param near balances to start from, by mode
   * @return balances by mode; empty when a mode has none
   */
  public static Optional<Map<ModeSpec, SteadyBalance>> atRest(
      PlantModel model, Case one, Map<ModeSpec, SteadyBalance> near) {
    Map<ModeSpec, SteadyBalance> balances = new LinkedHashMap<>();
    for (ModeSpec mode : model.spec().modes()) {
      SteadyBalance start = near.get(mode);
      Optional<SteadyBalance> balance =
          (start == null
                  ? model.mode(mode, one).steadyState()
                  : model.mode(mode, one).steadyState(start))
              .balance();
      if (balance.isEmpty()) {
        return Optional.empty();
      }
      balances.put(mode, balance.get());
    }
    return Optional.of(balances);
  }

  /**
   * Mean flows of the modes, weighted by their hours.
   *
   * @param model the plant
   * @param balances balances by mode
   * @return mean flows by name of the stream
   */
  public static Map<String, Stream> weighted(
      PlantModel model, Map<ModeSpec, SteadyBalance> balances) {
    Map<String, double[]> sums = new LinkedHashMap<>();
    balances.forEach(
        (mode, balance) -> {
          double weight = (mode.toS() - mode.fromS()) / InUnit.DAY.si(1);
          balance
              .streams()
              .forEach(
                  (name, stream) -> {
                    double[] sum =
                        sums.computeIfAbsent(name, n -> new double[model.constituents().count()]);
                    for (int i = 0; i < sum.length; i++) {
                      sum[i] += weight * stream.kgps(i);
                    }
                  });
        });
    Map<String, Stream> streams = new LinkedHashMap<>();
    sums.forEach((name, flows) -> streams.put(name, Stream.of(model.constituents(), flows)));
    return streams;
  }

  /**
   * Flows of modes at rest in another case, with what the day by schedule makes of the expected
   * case: each constituent of each stream by the ratio of both there, and what leaves then brought
   * back to what left, so that nothing is made or lost and no share passes 1.
   *
   * @param totals its streams put together
   * @param others flows of the modes at rest in the other case, weighted by their hours
   * @return mean flows by name of the stream
   */
  public Map<String, Stream> byDay(PlantTotals totals, Map<String, Stream> others) {
    if (!basis.byDay()) {
      return others;
    }
    Map<String, double[]> flows = new LinkedHashMap<>();
    others.forEach((name, stream) -> flows.put(name, changed(name, stream)));
    return balanced(totals, others, flows);
  }

  /**
   * Flows of a day by schedule in another case, brought back to what leaves at rest in that case,
   * as a pool may not yet have come to rest in it.
   *
   * @param totals its streams put together
   * @param others flows of the modes at rest in the other case, weighted by their hours
   * @param run the day in that case
   * @return mean flows by name of the stream
   */
  public Map<String, Stream> byDay(PlantTotals totals, Map<String, Stream> others, Day run) {
    Map<String, double[]> flows = new LinkedHashMap<>();
    others.keySet().forEach(name -> flows.put(name, run.meanFlows().get(name).toArray()));
    return balanced(totals, others, flows);
  }

  private static Map<String, Stream> balanced(
      PlantTotals totals, Map<String, Stream> others, Map<String, double[]> flows) {
    List<String> leaving = totals.leavingNames();
    Stream out = totals.sum(others, leaving);
    for (int i = 0; i < out.constituents().count(); i++) {
      double changed = 0;
      for (String name : leaving) {
        changed += flows.get(name)[i];
      }
      for (String name : leaving) {
        flows.get(name)[i] *= changed > 0 ? out.kgps(i) / changed : 1;
      }
    }
    Map<String, Stream> streams = new LinkedHashMap<>();
    flows.forEach((name, array) -> streams.put(name, Stream.of(out.constituents(), array)));
    return streams;
  }

  private double[] changed(String name, Stream stream) {
    double[] flows = stream.toArray();
    for (int i = 0; i < flows.length; i++) {
      double rest = atRest.get(name).kgps(i);
      flows[i] *= rest > 0 ? streams.get(name).kgps(i) / rest : 1;
    }
    return flows;
  }
}
