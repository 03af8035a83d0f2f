package sandslurry.plant.account;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.units.InUnit;

/**
 * How long a storage lasts, and how sand fills it.
 *
 * <p>Rain is counted on the whole area inside the banks, evaporation from the surface of the
 * liquid, which with sloping sides is the smaller the less there is: in the run of the months the
 * surface is that of the level reached, in steps of ten days at most. Rain and storm fall on the
 * area that drains into it too. Room is what lies below freeboard and storm, less the sand that has
 * settled. Storm depth, freeboard and period of storage are the user's numbers: rules of the place
 * decide, and this account certifies nothing.
 *
 * @param pond the storage
 * @param months the year by months, in order
 * @param stormM depth of the design storm on the area inside the banks [m]
 * @param freeboardM height kept free above all [m]
 * @param settledSandM3 bulk volume of sand on the floor now [m3]
 * @param sandKgps dry sand that comes in, a mean over the year [kg/s]
 * @param sandDensityKgM3 density of the mineral [kg/m3]
 * @param porosity porosity of the settled sand, 0 to below 1
 * @param runoffAreaM2 area beside the storage times the share of its rain that runs in [m2]
 */
public record StorageAccount(
    Pond pond,
    List<Month> months,
    double stormM,
    double freeboardM,
    double settledSandM3,
    double sandKgps,
    double sandDensityKgM3,
    double porosity,
    double runoffAreaM2) {
  private static final double TENTH = 0.1;
  private static final int MOST_YEARS = 100;
  private static final double LONGEST_STEP_D = 10;

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
        || !(runoffAreaM2 >= 0)
        || !(porosity >= 0 && porosity < 1)) {
      throw new IllegalArgumentException(
          "storm, freeboard (below the depth), settled sand, sand and runoff area must be >= 0, the"
              + " density > 0 and the porosity in 0 to 1");
    }
  }

  /**
   * Volume of the design storm.
   *
   * @return storm depth times the area inside the banks and what drains into it [m3]
   */
  public double stormVolumeM3() {
    return stormM * wetAreaM2();
  }

  private double wetAreaM2() {
    return pond.areaM2(pond.depthM()) + runoffAreaM2;
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
   * What a month adds when the storage is full to its working level, where most evaporates.
   *
   * @param month index of the month
   * @return inflow, rain and runoff less evaporation; negative in a dry month [m3]
   */
  public double netInflowM3(int month) {
    double surface = pond.areaM2(pond.depthForM(pond.volumeM3() - freeboardVolumeM3()));
    return months.get(month).days() * netPerDayM3(month, surface);
  }

  private double netPerDayM3(int month, double surfaceM2) {
    Month one = months.get(month);
    return one.inflowM3ps() * InUnit.DAY.si(1)
        + one.rainM() / one.days() * wetAreaM2()
        - one.evaporationM() / one.days() * surfaceM2;
  }

  /**
   * How the storage fills from empty, sand apart, at the end of the month before a month.
   *
   * @param startMonth index of the month
   * @param days time until it is full
   * @param month index of the month in which it is full
   */
  public record Filling(int startMonth, double days, int month) {}

  /**
   * The filling that is full first, of all months in which it may start: the least favourable.
   *
   * @return the filling; empty when it never fills, because the year evaporates what comes in
   */
  public Optional<Filling> worstFilling() {
    return worst(roomM3());
  }

  /**
   * The filling that runs over the brim first, with freeboard and the room of the storm used up.
   *
   * @return the filling; empty when it never does
   */
  public Optional<Filling> worstToTheBrim() {
    return worst(Math.max(0, pond.volumeM3() - settledSandM3));
  }

  private Optional<Filling> worst(double roomM3) {
    Optional<Filling> worst = Optional.empty();
    for (int start = 0; start < months.size(); start++) {
      Optional<Filling> one = new Run(start).until(roomM3);
      if (one.isPresent() && (worst.isEmpty() || one.get().days() < worst.get().days())) {
        worst = one;
      }
    }
    return worst;
  }

  /**
   * Days that the room lasts when the storage is emptied at the end of the least favourable month.
   *
   * @return the days; empty when it never fills, because the year evaporates what comes in
   */
  public OptionalDouble daysOfStorage() {
    Optional<Filling> worst = worstFilling();
    return worst.isPresent() ? OptionalDouble.of(worst.get().days()) : OptionalDouble.empty();
  }

  /**
   * Room that a number of days of storage asks for.
   *
   * @param days the days wanted
   * @return most that is held within so many days, from the least favourable month on [m3]
   */
  public double roomNeededM3(double days) {
    double most = 0;
    for (int start = 0; start < months.size(); start++) {
      most = Math.max(most, new Run(start).most(days));
    }
    return most;
  }

  /**
   * Years until settled sand first leaves less room, below freeboard and storm, than a number of
   * days of storage asks for: from then on the sand cuts into the reserve of storm and freeboard.
   *
   * @param days the days wanted
   * @return the years, 0 when there is too little room now; empty when no sand comes
   */
  public OptionalDouble yearsUntilShortOf(double days) {
    double spare = roomM3() - roomNeededM3(days);
    if (spare < 0) {
      return OptionalDouble.of(0);
    }
    return sandKgps > 0 ? OptionalDouble.of(spare / sandPerYearM3()) : OptionalDouble.empty();
  }

  /** The liquid of a storage in the course of months, from none on. */
  private final class Run {
    private final int start;
    private final HeldLiquid liquid = new HeldLiquid(pond, settledSandM3, 0);

    Run(int start) {
      this.start = start;
    }

    /** Net inflow a day at the level reached. */
    private double rate(int month) {
      return netPerDayM3(month, liquid.surfaceM2());
    }

    Optional<Filling> until(double roomM3) {
      if (roomM3 <= 0) {
        return Optional.of(new Filling(start, 0, start));
      }
      double days = 0;
      for (int year = 0; year < MOST_YEARS; year++) {
        double before = liquid.heldM3;
        for (int i = 0; i < months.size(); i++) {
          int month = (start + i) % months.size();
          int steps = steps(month);
          double length = months.get(month).days() / steps;
          for (int step = 0; step < steps; step++) {
            double rate = rate(month);
            if (rate > 0 && liquid.heldM3 + rate * length >= roomM3) {
              return Optional.of(new Filling(start, days + (roomM3 - liquid.heldM3) / rate, month));
            }
            liquid.heldM3 = Math.max(0, liquid.heldM3 + rate * length);
            days += length;
          }
        }
        if (liquid.heldM3 <= before) {
          return Optional.empty();
        }
      }
      return Optional.empty();
    }

    double most(double wantedDays) {
      double days = 0;
      double most = 0;
      for (int i = 0; days < wantedDays; i++) {
        int month = (start + i) % months.size();
        int steps = steps(month);
        for (int step = 0; step < steps && days < wantedDays; step++) {
          double length = Math.min(months.get(month).days() / steps, wantedDays - days);
          liquid.heldM3 = Math.max(0, liquid.heldM3 + rate(month) * length);
          most = Math.max(most, liquid.heldM3);
          days += months.get(month).days() / steps;
        }
      }
      return most;
    }
  }

  /** Steps in which a month is gone through. */
  int steps(int month) {
    return (int) Math.ceil(months.get(month).days() / LONGEST_STEP_D);
  }

  /**
   * Bulk volume of sand that settles in a year of 365 days.
   *
   * @return sand over its density, pores included [m3]
   */
  public double sandPerYearM3() {
    return sandKgps * InUnit.DAY.si(365) / (sandDensityKgM3 * (1 - porosity));
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
