package sandslurry.assessment.plant.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.design.plant.PlantSpec;
import sandslurry.plant.profile.Fall;
import sandslurry.plant.profile.HydraulicProfile;
import sandslurry.plant.profile.Levels;
import sandslurry.plant.profile.Lift;
import sandslurry.plant.unit.PlantUnit;

/** Finds the hydraulic profile of a plant from the levels of its units and the lines between. */
public final class ProfileEvaluation {
  private ProfileEvaluation() {}

  /**
   * What the line of a stream says of its levels.
   *
   * @param pumped whether a pump drives it
   * @param staticM static head that it is judged with, at its lowest source level [m]
   * @param need the fall that it needs without a pump
   */
  public record StreamLine(boolean pumped, OptionalDouble staticM, Optional<Fall.Need> need) {}

  /**
   * Finds the profile.
   *
   * @param spec the plant
   * @param lines the lines of its streams, by stream
   * @return the profile; empty when no two units with levels are connected
   */
  public static Optional<HydraulicProfile> of(PlantSpec spec, Map<String, StreamLine> lines) {
    Map<String, Levels> levels = spec.levels().units();
    List<Fall> falls = new ArrayList<>();
    List<Lift> lifts = new ArrayList<>();
    for (PlantUnit to : spec.units()) {
      for (PlantUnit from : spec.units()) {
        if (!levels.containsKey(from.name()) || !levels.containsKey(to.name())) {
          continue;
        }
        Levels upper = levels.get(from.name());
        Levels lower = levels.get(to.name());
        for (String stream : to.inlets()) {
          Optional<StreamLine> line = Optional.ofNullable(lines.get(stream));
          boolean pumped =
              from.pumped().contains(stream)
                  || from.byGravity().contains(stream)
                      && (to.role() == PlantUnit.Role.SPINS
                          || line.map(StreamLine::pumped).orElse(false));
          if (pumped) {
            lifts.add(
                new Lift(
                    stream,
                    from.name(),
                    to.name(),
                    lower.lowestM() - upper.highestM(),
                    lower.highestM() - upper.lowestM(),
                    line.map(StreamLine::staticM).orElseGet(OptionalDouble::empty)));
          } else if (from.byGravity().contains(stream)) {
            falls.add(
                new Fall(
                    stream,
                    from.name(),
                    to.name(),
                    upper.overflowM(),
                    lower.highestM(),
                    line.flatMap(StreamLine::need)));
          }
        }
      }
    }
    return falls.isEmpty() && lifts.isEmpty()
        ? Optional.empty()
        : Optional.of(HydraulicProfile.of(spec.levels(), falls, lifts));
  }
}
