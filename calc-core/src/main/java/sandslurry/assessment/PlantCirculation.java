package sandslurry.assessment;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sandslurry.assessment.PlantModel.Case;
import sandslurry.circuit.Constituents;
import sandslurry.circuit.SandAccount;
import sandslurry.circuit.SandCirculation;
import sandslurry.circuit.SteadyBalance;
import sandslurry.circuit.Stream;
import sandslurry.design.PlantSpec.ModeSpec;
import sandslurry.design.PlantSpec.StorageSpec;
import sandslurry.design.PlantSpec.Use;
import sandslurry.numeric.UnsolvedException;

/**
 * The sand that circulates put back through the units of a plant.
 *
 * <p>The plant is asked by the modes at rest. What the day by schedule makes of the capture of each
 * class, found with new sand, is taken to hold for the sand that circulates too: the capture of a
 * class is that of the modes at rest times the ratio of both with new sand.
 */
final class PlantCirculation {
  private final PlantModel model;
  private final PlantTotals totals;
  private final double[] ratio;

  /** The sand at rest and where it goes. */
  record State(SandCirculation rest, SandAccount account) {}

  PlantCirculation(PlantModel model, PlantTotals totals, PlantDay day) {
    this.model = model;
    this.totals = totals;
    Stream byDay = recovered(day.streams());
    Stream atRest = recovered(day.atRest());
    this.ratio = new double[model.constituents().count()];
    for (int i = Constituents.MINERAL_FINES; i < ratio.length; i++) {
      ratio[i] = atRest.kgps(i) > 0 ? byDay.kgps(i) / atRest.kgps(i) : 1;
    }
  }

  private Stream recovered(Map<String, Stream> streams) {
    return totals.sum(streams, totals.products(Use.BEDDING));
  }

  /** The state at rest in a case, from its balances with new sand on. */
  Optional<State> rest(Case one, Map<ModeSpec, SteadyBalance> balances) {
    Run run = new Run(one, balances);
    try {
      SandCirculation rest = SandCirculation.of(model.bedded(one), run::rebedded);
      return Optional.of(new State(rest, run.account(rest.bedded())));
    } catch (UnsolvedException e) {
      return Optional.empty();
    }
  }

  private final class Run {
    private final Case one;
    private Map<ModeSpec, SteadyBalance> last;
    private Stream lastBedded;

    Run(Case one, Map<ModeSpec, SteadyBalance> balances) {
      this.one = one;
      this.last = balances;
      this.lastBedded = model.bedded(one);
    }

    private Map<String, Stream> streams(Stream bedded) {
      if (!bedded.equals(lastBedded)) {
        last =
            PlantDay.atRest(model, one.bedded(bedded), last)
                .orElseThrow(
                    () ->
                        new UnsolvedException("with the sand that circulates no mode is at rest"));
        lastBedded = bedded;
      }
      return PlantDay.weighted(model, last);
    }

    /** The recovered stream with the capture of the day. */
    private Stream corrected(Map<String, Stream> streams) {
      Stream flushed = totals.sum(streams, totals.feeds());
      double[] flows = recovered(streams).toArray();
      for (int i = Constituents.MINERAL_FINES; i < flows.length; i++) {
        flows[i] = Math.min(flushed.kgps(i), flows[i] * ratio[i]);
      }
      return Stream.of(model.constituents(), flows);
    }

    Stream rebedded(Stream bedded) {
      return corrected(streams(bedded)).times(model.spec().rebeddedShare());
    }

    SandAccount account(Stream bedded) {
      Map<String, Stream> streams = streams(bedded);
      Stream flushed = totals.sum(streams, totals.feeds());
      Stream caught = corrected(streams);
      Map<String, Stream> lost = new LinkedHashMap<>();
      for (StorageSpec storage : totals.storages()) {
        lost.put(storage.name(), totals.sum(streams, storage.inlets()));
      }
      for (Use use : List.of(Use.FIBRE, Use.SETTLED, Use.WASTE)) {
        if (!totals.products(use).isEmpty()) {
          lost.put(use.word(), totals.sum(streams, totals.products(use)));
        }
      }
      double[] all = Stream.mix(model.constituents(), lost.values()).toArray();
      lost.replaceAll(
          (where, stream) -> {
            double[] flows = stream.toArray();
            for (int i = Constituents.SAND; i < flows.length; i++) {
              // What is not caught leaves by the ways by which it leaves at rest.
              double left = Math.max(0, flushed.kgps(i) - caught.kgps(i));
              flows[i] = all[i] > 0 ? flows[i] * left / all[i] : 0;
            }
            return Stream.of(model.constituents(), flows);
          });
      return new SandAccount(bedded, flushed, caught, model.spec().rebeddedShare(), lost);
    }
  }
}
