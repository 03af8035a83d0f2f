package sandslurry.assessment.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sandslurry.assessment.plant.PlantModel.Case;
import sandslurry.plant.Stream;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.network.SteadyState;
import sandslurry.plant.schedule.StreamDay;

/**
 * The streams of a plant at every time at which the lines that carry them are judged, worked out
 * once for all lines: in every mode at its steady state, with new sand and with the coarser sand
 * that circulates at rest, and in the hour of the last day by schedule in which a stream holds most
 * sand. A pit that is filled in batches sends more at times than in the mean.
 */
public final class CarriedStreams {
  private final List<Time> steady = new ArrayList<>();
  private final Map<String, StreamDay> days;

  /** A time; of a mode without a balance nobody knows what flows. */
  private record Time(String when, double lastsS, Optional<Map<String, Stream>> streams) {}

  /**
   * Looks at a plant at every time.
   *
   * @param model the plant
   * @param plant what came of it
   */
  public CarriedStreams(PlantModel model, PlantResult plant) {
    Optional<Case> coarser =
        plant
            .accounts()
            .flatMap(accounts -> accounts.circulation().sand())
            .map(rest -> Case.BASE.bedded(rest.bedded()));
    for (PlantResult.ModeResult mode : plant.modes()) {
      String when = "in the mode \"" + mode.mode().name() + "\"";
      steady.add(
          new Time(
              when,
              mode.mode().toS() - mode.mode().fromS(),
              mode.balance().map(SteadyBalance::streams)));
      coarser
          .map(rest -> model.mode(mode.mode(), rest).steadyState())
          .flatMap(SteadyState::balance)
          .map(SteadyBalance::streams)
          .ifPresent(
              streams ->
                  steady.add(
                      new Time(when + " with the circulating sand", 0, Optional.of(streams))));
    }
    this.days = plant.days().last().map(day -> day.streams()).orElse(Map.of());
  }

  /**
   * A stream at every time.
   *
   * @param name its name
   * @return the stream as it is at each
   */
  public List<CarriedStream> of(String name) {
    List<CarriedStream> all = new ArrayList<>();
    for (Time time : steady) {
      all.add(
          new CarriedStream(
              name, time.when(), time.lastsS(), time.streams().map(streams -> streams.get(name))));
    }
    if (days.containsKey(name)) {
      all.add(moment(name, "at the sandiest moment", days.get(name).sandiest()));
    }
    return all;
  }

  /**
   * The same, and the moments of the last day by schedule at which least and most flows: a pump
   * brings its stream at a rate of its own, gravity what comes.
   *
   * @param name its name
   * @return the stream as it is at each
   */
  public List<CarriedStream> byGravity(String name) {
    List<CarriedStream> all = of(name);
    if (days.containsKey(name)) {
      // The mean of what comes in batches never flows.
      double least = days.get(name).least().volumeM3ps() * (1 - 1e-6);
      all.removeIf(time -> time.stream().isPresent() && time.flowM3ps() < least);
      all.add(moment(name, "at the minimum flow rate with sand", days.get(name).least()));
      all.add(moment(name, "at the maximum flow rate", days.get(name).greatest()));
    }
    return all;
  }

  private static CarriedStream moment(String name, String when, Stream stream) {
    return new CarriedStream(name, when + " in the day by schedule", 0, Optional.of(stream));
  }
}
