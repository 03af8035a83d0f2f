package sandslurry.assessment.plant;

import java.util.Map;
import java.util.Optional;
import sandslurry.assessment.plant.PlantModel.Case;
import sandslurry.design.plant.PlantSpec.ModeSpec;
import sandslurry.design.plant.PlantSpec.Use;
import sandslurry.numeric.UnsolvedException;
import sandslurry.plant.Stream;
import sandslurry.plant.account.SandAccount;
import sandslurry.plant.account.SandCirculation;
import sandslurry.plant.network.SteadyBalance;

/**
 * The sand that circulates put back through the units of a plant.
 *
 * <p>The plant is asked by the modes at rest. What the day by schedule makes of their flows, found
 * with new sand, is taken to hold for the sand that circulates too ({@link PlantDay#byDay}).
 *
 * @param model the plant
 * @param day what its day makes of its modes
 */
public record PlantCirculation(PlantModel model, PlantDay day) {
  /**
   * The circulating sand and where it goes.
   *
   * @param rest gradation that no longer changes
   * @param account bedded, flushed, recovered and lost
   */
  public record State(SandCirculation rest, SandAccount account) {}

  /**
   * The circulating sand of a case, from its balances with new sand.
   *
   * @param one the case
   * @param balances balances with new sand, by mode
   * @return the state; empty when a mode comes to no balance
   */
  public Optional<State> rest(Case one, Map<ModeSpec, SteadyBalance> balances) {
    Run run = new Run(one, balances);
    try {
      SandCirculation rest = SandCirculation.of(model.bedded(one), run::rebedded);
      return Optional.of(
          new State(rest, model.totals().account(rest.bedded(), run.streams(rest.bedded()))));
    } catch (UnsolvedException e) {
      return Optional.empty();
    }
  }

  /** One case; the balances of each bedding are looked for from those of the one before. */
  private final class Run {
    private final Case one;
    private Map<ModeSpec, SteadyBalance> last;
    private Stream lastBedded;

    Run(Case one, Map<ModeSpec, SteadyBalance> balances) {
      this.one = one;
      this.last = balances;
      this.lastBedded = model.bedded(one);
    }

    Map<String, Stream> streams(Stream bedded) {
      if (!bedded.equals(lastBedded)) {
        last =
            PlantDay.atRest(model, one.bedded(bedded), last)
                .orElseThrow(
                    () ->
                        new UnsolvedException(
                            "with the sand that circulates no mode has a steady state"));
        lastBedded = bedded;
      }
      return day.byDay(model.totals(), PlantDay.weighted(model, last));
    }

    Stream rebedded(Stream bedded) {
      return model
          .totals()
          .sum(streams(bedded), model.totals().products(Use.BEDDING))
          .times(model.spec().rebeddedShare());
    }
  }
}
