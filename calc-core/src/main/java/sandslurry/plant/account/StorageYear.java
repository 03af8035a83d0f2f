package sandslurry.plant.account;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.numeric.Roots;
import sandslurry.units.InUnit;

/**
 * The level of a storage in the course of a year in which it is emptied at the end of given months.
 *
 * <pre>
 * held at the end = held at the start + inflow + rain + runoff − evaporation − withdrawn − spilled
 * </pre>
 *
 * <p>The year that is given is the one that repeats itself. More held at its start never means less
 * held at its end, so that one can always be found; where it spills, the storage gains more in a
 * year than it is emptied by, and the first year from empty on is given instead, with when it runs
 * over.
 *
 * @param months the months in order
 * @param repeats whether the year repeats itself without a spill
 * @param gainM3 what it holds more at the end than at the start of the year given [m3]
 * @param full when the room below freeboard and storm is first used up; empty when it never is
 * @param over when it first runs over the brim, year 101 for later; empty when it never does
 */
public record StorageYear(
    List<Course> months, boolean repeats, double gainM3, Optional<When> full, Optional<When> over) {
  private static final double SAME = 1e-9;
  private static final int MOST_YEARS = 100;

  /** Copies the list. */
  public StorageYear {
    months = List.copyOf(months);
  }

  /**
   * An emptying at the end of a month, by exactly one of volume and share.
   *
   * @param month index of the month
   * @param volumeM3 volume taken, or all there is [m3]
   * @param share share taken of the liquid that is held
   */
  public record Emptying(int month, OptionalDouble volumeM3, OptionalDouble share) {
    /** Checks every bound. */
    public Emptying {
      if (volumeM3.isPresent() == share.isPresent()
          || !(volumeM3.orElse(0) >= 0)
          || !(share.orElse(0) >= 0 && share.orElse(0) <= 1)) {
        throw new IllegalArgumentException("an emptying needs a volume >= 0 or a share in 0 to 1");
      }
    }

    private double wantedM3(double heldM3) {
      return volumeM3.orElse(share.orElse(0) * heldM3);
    }
  }

  /**
   * A point in time.
   *
   * @param day day of its year, from 0 on at the start of the first month
   * @param month index of the month
   * @param year number of the year, 1 for the first
   */
  public record When(double day, int month, int year) {}

  /**
   * A month of the year.
   *
   * @param name its name
   * @param water what comes and goes in it
   * @param startM3 liquid held at its start [m3]
   * @param mostM3 most liquid held in it [m3]
   * @param endM3 liquid held at its end, after the emptying [m3]
   * @param freeboardM least height left between liquid and brim [m]
   */
  public record Course(
      String name, Water water, double startM3, double mostM3, double endM3, double freeboardM) {}

  /**
   * What comes and goes in a month.
   *
   * @param inflowM3 what flows in [m3]
   * @param rainM3 rain on the area inside the banks [m3]
   * @param runoffM3 rain that runs in from beside it [m3]
   * @param evaporationM3 what evaporates [m3]
   * @param withdrawnM3 what is taken at the end of the month [m3]
   * @param missingM3 what was to be taken but is not there [m3]
   * @param spilledM3 what runs over the brim [m3]
   */
  public record Water(
      double inflowM3,
      double rainM3,
      double runoffM3,
      double evaporationM3,
      double withdrawnM3,
      double missingM3,
      double spilledM3) {
    /**
     * What it adds, emptying and spill apart.
     *
     * @return inflow, rain and runoff less evaporation [m3]
     */
    public double netM3() {
      return inflowM3 + rainM3 + runoffM3 - evaporationM3;
    }
  }

  /**
   * The year of a storage.
   *
   * @param account the storage with its months
   * @param emptyings when it is emptied
   * @return the year
   */
  public static StorageYear of(StorageAccount account, List<Emptying> emptyings) {
    double brim = Math.max(0, account.pond().volumeM3() - account.settledSandM3());
    Year first = new Year(account, emptyings, brim, 0);
    Year again = new Year(account, emptyings, brim, first.endM3());
    if (Math.abs(again.endM3() - first.endM3()) > SAME * brim) {
      double start =
          Roots.between(
              "year of the storage",
              held -> new Year(account, emptyings, brim, held).endM3() - held,
              first.endM3(),
              brim);
      again = new Year(account, emptyings, brim, start);
    }
    if (!(again.spilledM3() > SAME * brim)) {
      return new StorageYear(
          again.courses,
          true,
          again.endM3() - again.startM3,
          again.full.map(day -> day.in(1)),
          Optional.empty());
    }
    Optional<When> full = Optional.empty();
    Optional<When> over = Optional.empty();
    Year year = first;
    for (int n = 1; n <= MOST_YEARS && over.isEmpty(); n++) {
      int number = n;
      if (full.isEmpty()) {
        full = year.full.map(day -> day.in(number));
      }
      over = year.over.map(day -> day.in(number));
      year = new Year(account, emptyings, brim, year.endM3());
    }
    if (over.isEmpty()) {
      over = again.over.map(day -> day.in(MOST_YEARS + 1));
    }
    return new StorageYear(first.courses, false, first.endM3(), full, over);
  }

  /**
   * The month in which the liquid stands highest.
   *
   * @return its index
   */
  public int highest() {
    int highest = 0;
    for (int i = 1; i < months.size(); i++) {
      highest = months.get(i).mostM3() > months.get(highest).mostM3() ? i : highest;
    }
    return highest;
  }

  /**
   * The month that adds most.
   *
   * @return its index
   */
  public int wettest() {
    int wettest = 0;
    for (int i = 1; i < months.size(); i++) {
      if (months.get(i).water().netM3() > months.get(wettest).water().netM3()) {
        wettest = i;
      }
    }
    return wettest;
  }

  /** A day of a year. */
  private record Day(double day, int month) {
    When in(int year) {
      return new When(day, month, year);
    }
  }

  /** One year from a volume on. */
  private static final class Year {
    private final StorageAccount account;
    private final double brimM3;
    private final double startM3;
    private final HeldLiquid liquid;
    private final List<Course> courses = new ArrayList<>();
    private double days;
    private Optional<Day> full = Optional.empty();
    private Optional<Day> over = Optional.empty();

    Year(StorageAccount account, List<Emptying> emptyings, double brimM3, double startM3) {
      this.account = account;
      this.brimM3 = brimM3;
      this.startM3 = startM3;
      this.liquid = new HeldLiquid(account.pond(), account.settledSandM3(), startM3);
      for (int month = 0; month < account.months().size(); month++) {
        courses.add(course(month, emptyings));
      }
      double room = account.roomM3();
      if (full.isEmpty() && courses.stream().anyMatch(c -> c.startM3() > room)) {
        full = Optional.of(new Day(0, 0));
      }
    }

    double endM3() {
      return liquid.heldM3;
    }

    double spilledM3() {
      return courses.stream().mapToDouble(course -> course.water().spilledM3()).sum();
    }

    private Course course(int index, List<Emptying> emptyings) {
      StorageAccount.Month month = account.months().get(index);
      double start = liquid.heldM3;
      double most = start;
      double evaporated = 0;
      double spilled = 0;
      double top = account.pond().areaM2(account.pond().depthM());
      double inflow = month.inflowM3ps() * InUnit.DAY.si(month.days());
      double rain = month.rainM() * top;
      double runoff = month.rainM() * account.runoffAreaM2();
      int steps = account.steps(index);
      for (int step = 0; step < steps; step++) {
        double there = liquid.heldM3 + (inflow + rain + runoff) / steps;
        double gone = Math.min(there, month.evaporationM() / steps * liquid.surfaceM2());
        double then = there - gone;
        evaporated += gone;
        crossed(index, then, month.days() / steps);
        spilled += Math.max(0, then - brimM3);
        liquid.heldM3 = Math.min(then, brimM3);
        most = Math.max(most, liquid.heldM3);
        days += month.days() / steps;
      }
      double wanted = 0;
      double withdrawn = 0;
      double freeboard =
          account.pond().depthM()
              - new HeldLiquid(account.pond(), account.settledSandM3(), most).depthM();
      for (Emptying emptying : emptyings) {
        if (emptying.month() == index) {
          double taken = Math.min(liquid.heldM3, emptying.wantedM3(liquid.heldM3));
          wanted += emptying.wantedM3(liquid.heldM3);
          withdrawn += taken;
          liquid.heldM3 -= taken;
        }
      }
      return new Course(
          month.name(),
          new Water(inflow, rain, runoff, evaporated, withdrawn, wanted - withdrawn, spilled),
          start,
          most,
          liquid.heldM3,
          freeboard);
    }

    /** Keeps when the liquid first rises above its room and above the brim. */
    private void crossed(int month, double then, double length) {
      double now = liquid.heldM3;
      double room = account.roomM3();
      if (full.isEmpty() && now <= room && then > room) {
        full = Optional.of(new Day(days + length * (room - now) / (then - now), month));
      }
      if (over.isEmpty() && then > brimM3) {
        double share = now < brimM3 ? (brimM3 - now) / (then - now) : 0;
        over = Optional.of(new Day(days + length * share, month));
      }
    }
  }
}
