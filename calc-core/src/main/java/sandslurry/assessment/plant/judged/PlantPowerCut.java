package sandslurry.assessment.plant.judged;

import java.util.HashSet;
import java.util.OptionalDouble;
import java.util.Set;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.unit.PitUnit;
import sandslurry.plant.unit.PlantUnit;
import sandslurry.plant.unit.PlantUnit.Role;

/**
 * What still flows into a pit when the power fails: what pens and fresh water bring by gravity.
 * What a pump brings stops; a unit passes on the share of its feed that still comes.
 *
 * @param model the plant
 * @param balance the flows before the cut
 */
record PlantPowerCut(PlantModel model, SteadyBalance balance) {
  /**
   * Time in which the pit fills to its brim, all pumps being stopped.
   *
   * @param fromM3 volume in it when the power fails [m3]
   * @return the time [s]; empty when nothing comes in or a weir takes it
   */
  OptionalDouble fillsS(PitUnit pit, double fromM3) {
    double inflow = inflowM3ps(pit);
    return inflow > 0 && pit.pit().overflow().isEmpty()
        ? OptionalDouble.of(Math.max(0, pit.pit().capacityM3() - fromM3) / inflow)
        : OptionalDouble.empty();
  }

  /** What still flows into a pit [m3/s]. */
  double inflowM3ps(PitUnit pit) {
    return into(pit, new HashSet<>());
  }

  private double into(PlantUnit unit, Set<String> seen) {
    double sum = 0;
    for (String inlet : unit.inlets()) {
      sum += flows(inlet, seen);
    }
    return sum;
  }

  private double flows(String stream, Set<String> seen) {
    double before = balance.stream(stream).volumeM3ps();
    for (PlantUnit unit : model.spec().units()) {
      if (!unit.outlets().contains(stream)) {
        continue;
      }
      if (unit.pumps().containsKey(stream)) {
        return 0;
      }
      double fed = balance.feed(unit.name()).volumeM3ps();
      // A way that comes back to itself without a pump is taken to go on as it did.
      if (!(fed > 0) || !seen.add(unit.name())) {
        return before;
      }
      double comes = into(unit, seen);
      seen.remove(unit.name());
      return unit.role() == Role.HOLDS ? comes : before * Math.min(1, comes / fed);
    }
    return before;
  }
}
