package sandslurry.circuit;

import java.util.List;
import java.util.OptionalDouble;
import sandslurry.units.InUnit;

/**
 * How long a storage lasts, and how sand fills it.
 *
 * <p>Rain is counted on the whole area inside the banks, evaporation from the surface at the
 * working level. Room is what lies below freeboard and storm, less the sand that has settled. Storm
 * depth, freeboard and period of storage are the user's numbers: rules of the place decide, and
 * this account certifies nothing.
 *
 * @param pond the storage
 * @param months the year by months, in order
 * @param stormM depth of the design storm on the area inside the banks [m]
 * @param freeboardM height kept free above all [m]
 * @param settledSandM3 bulk volume of sand on the floor now [m3]
 * @param sandKgps dry sand that comes in, a mean over the year [kg/s]
 * @param sandDensityKgM3 density of the mineral [kg/m3]
 * @param porosity porosity of the settled sand, 0 to below 1
 */
public record StorageAccount(
    Pond pond,
    List<Month> months,
    double stormM,
    double freeboardM,
    double settledSandM3,
    double sandKgps,
    double sandDensityKgM3,
    double porosity) {
  private static final double TENTH = 0.1;
  private static final int MOST_YEARS = 100;

  /**
   * A month.
   *
   * @param name its name
   * @param days its length
   * @param inflowM3ps liquid that comes in, grains of sand included [m3/s]
   * @param rainM rain in the month [m]
   * @param evaporationM evaporation in the month [m]
   */
  public record Month(
      String name, double days, double inflowM3ps, double rainM, double evaporationM) {
    /** Checks every bound. */
    public Month {
      if (!(days > 0) || !(inflowM3ps >= 0) || !(rainM >= 0) || !(evaporationM >= 0)) {
        throw new IllegalArgumentException(
            name + ": days must be > 0 and inflow, rain and evaporation >= 0");
      }
    }
  }

  /** Copies the list and checks every bound. */
  public StorageAccount {
    months = List.copyOf(months);
    if (months.isEmpty()) {
      throw new IllegalArgumentException("a storage account needs months");
    }
    if (!(stormM >= 0)
        || !(freeboardM >= 0 && freeboardM < pond.depthM())
        || !(settledSandM3 >= 0)
        || !(sandKgps >= 0)
        || !(sandDensityKgM3 > 0)
        || !(porosity >= 0 && porosity < 1)) {
      throw new IllegalArgumentException(
          "storm, freeboard (below the depth), settled sand and sand must be >= 0, the density > 0"
              + " and the porosity in 0 to 1");
    }
  }

  /**
   * Volume of the design storm.
   *
   * @return storm depth times the area inside the banks [m3]
   */
  public double stormVolumeM3() {
    return stormM * pond.areaM2(pond.depthM());
  }

  /**
   * Volume of the freeboard.
   *
   * @return volume between the top and the freeboard below it [m3]
   */
  public double freeboardVolumeM3() {
    return pond.volumeM3() - pond.volumeM3(pond.depthM() - freeboardM);
  }

  /**
   * Room for what comes in.
   *
   * @return volume below freeboard and storm, less settled sand; 0 when there is none [m3]
   */
  public double roomM3() {
    return Math.max(0, pond.volumeM3() - freeboardVolumeM3() - stormVolumeM3() - settledSandM3);
  }

  /**
   * What a month adds.
   *
   * @param month index of the month
   * @return inflow and rain less evaporation; negative in a dry month [m3]
   */
  public double netInflowM3(int month) {
    Month one = months.get(month);
    double surface = pond.areaM2(pond.depthForM(pond.volumeM3() - freeboardVolumeM3()));
    return one.inflowM3ps() * InUnit.ofDays(one.days())
        + one.rainM() * pond.areaM2(pond.depthM())
        - one.evaporationM() * surface;
  }

  /**
   * Days that the room lasts when the storage is emptied at the end of the least favourable month.
   *
   * @return the days; empty when it never fills, because the year evaporates what comes in
   */
  public OptionalDouble daysOfStorage() {
    OptionalDouble least = OptionalDouble.empty();
    for (int start = 0; start < months.size(); start++) {
      OptionalDouble days = daysFrom(start);
      if (days.isPresent() && !(least.isPresent() && least.getAsDouble() <= days.getAsDouble())) {
        least = days;
      }
    }
    return least;
  }

  private OptionalDouble daysFrom(int start) {
    double room = roomM3();
    double held = 0;
    double days = 0;
    for (int i = 0; i < MOST_YEARS * months.size(); i++) {
      int month = (start + i) % months.size();
      double net = netInflowM3(month);
      double length = months.get(month).days();
      if (held + net >= room) {
        return OptionalDouble.of(days + (net > 0 ? length * (room - held) / net : 0));
      }
      held = Math.max(0, held + net);
      days += length;
    }
    return OptionalDouble.empty();
  }

  /**
   * Bulk volume of sand that settles in a year of 365 days.
   *
   * @return sand over its density, pores included [m3]
   */
  public double sandPerYearM3() {
    return sandKgps * InUnit.ofDays(365) / (sandDensityKgM3 * (1 - porosity));
  }

  /**
   * How much higher the sand lies after a year, spread evenly over the floor.
   *
   * @return rise of the bed in the coming year; what is left of the depth when it fills the pond
   *     [m]
   */
  public double sandRisePerYearM() {
    double now = Math.min(settledSandM3, pond.volumeM3());
    double then = Math.min(settledSandM3 + sandPerYearM3(), pond.volumeM3());
    return pond.depthForM(then) - pond.depthForM(now);
  }

  /**
   * Years until settled sand takes a tenth of the volume to the top.
   *
   * @return the years, 0 when it does already; empty when no sand comes
   */
  public OptionalDouble yearsToTenth() {
    double missing = TENTH * pond.volumeM3() - settledSandM3;
    if (missing <= 0) {
      return OptionalDouble.of(0);
    }
    return sandKgps > 0 ? OptionalDouble.of(missing / sandPerYearM3()) : OptionalDouble.empty();
  }
}
