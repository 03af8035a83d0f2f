package sandslurry.plant.account;

import java.util.List;
import sandslurry.plant.Range;
import sandslurry.units.InUnit;

/**
 * The energy that a machine takes.
 *
 * @param what the machine
 * @param powerW electric power while it runs [W]
 * @param runningShare share of the day that it runs, 0 to 1
 */
public record EnergyUse(String what, Range powerW, double runningShare) {
  /** Checks every bound. */
  public EnergyUse {
    if (!(powerW.low() >= 0) || !(runningShare >= 0 && runningShare <= 1)) {
      throw new IllegalArgumentException(
          what + ": power must be >= 0 and the share of the day in 0 to 1");
    }
  }

  /**
   * Energy in a day.
   *
   * @return energy [J]
   */
  public Range perDayJ() {
    return powerW.map(watts -> watts * runningShare * InUnit.DAY.si(1));
  }

  /**
   * Energy of several machines in a day.
   *
   * @param uses the machines
   * @return the sum [J]
   */
  public static Range totalPerDayJ(List<EnergyUse> uses) {
    return uses.stream().map(EnergyUse::perDayJ).reduce(Range.of(0), Range::plus);
  }
}
