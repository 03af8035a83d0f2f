package sandslurry.assessment.plant;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import sandslurry.assessment.service.ServiceResult.GravityRun;
import sandslurry.design.plant.PlantSpec.ModeSpec;
import sandslurry.design.plant.YearSpec.MonthSpec;
import sandslurry.material.sand.StandardSand;
import sandslurry.plant.Figure;
import sandslurry.plant.Range;
import sandslurry.plant.account.SandAccount;
import sandslurry.plant.account.SandCirculation;
import sandslurry.plant.account.SandCycle;
import sandslurry.plant.account.StorageAccount;
import sandslurry.plant.account.StorageYear;
import sandslurry.plant.network.NoSteadyState;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.network.SteadyState;
import sandslurry.plant.pen.PenLoad;
import sandslurry.plant.profile.HydraulicProfile;
import sandslurry.plant.schedule.DayRun;
import sandslurry.plant.unit.PlantUnit.Part;
import sandslurry.units.Kind;

/**
 * What came of a plant.
 *
 * @param loads what each pen makes
 * @param total what all pens make
 * @param modes the steady state of each mode
 * @param accounts the accounts over the day, present when every mode has a steady state
 * @param days the days by schedule, from the start volumes of the pits filled with water
 * @param settledDay the first day from which on the liquor of the pits stays within a twentieth of
 *     its way to the last day; empty when it did not settle in the days tried, or nothing is pitted
 * @param recycling what more and less recycling does
 * @param units figures of each unit at the balance of the longest mode, by its name
 * @param sizing how much purge or fresh water brings the sand recovery to its target
 * @param outages what a week without one separator or pump does, by the schedule
 * @param profile the levels of its units and what follows from them; empty without levels
 * @param gravity what came of each line by gravity, by its stream
 */
// More than ten components: each is a chapter of its own, and no two belong together.
public record PlantResult(
    List<PenLoad> loads,
    PenLoad total,
    List<ModeResult> modes,
    Optional<Accounts> accounts,
    DayRun days,
    OptionalInt settledDay,
    List<Recycling> recycling,
    Map<String, List<Figure>> units,
    WaterSizing sizing,
    List<Outage> outages,
    Optional<HydraulicProfile> profile,
    Map<String, GravityRun> gravity) {
  /** Copies the lists. */
  public PlantResult {
    loads = List.copyOf(loads);
    modes = List.copyOf(modes);
    recycling = List.copyOf(recycling);
    units = PlantMaps.ordered(units);
    outages = List.copyOf(outages);
    gravity = PlantMaps.ordered(gravity);
  }

  /**
   * The same plant with other accounts.
   *
   * @param other the accounts
   * @return the result
   */
  public PlantResult with(Accounts other) {
    return with(Optional.of(other), profile, gravity);
  }

  /**
   * The same plant with its hydraulic profile and its lines by gravity.
   *
   * @param found the profile
   * @param runs what came of each line by gravity, by its stream
   * @return the result
   */
  public PlantResult with(Optional<HydraulicProfile> found, Map<String, GravityRun> runs) {
    return with(accounts, found, runs);
  }

  private PlantResult with(
      Optional<Accounts> other, Optional<HydraulicProfile> found, Map<String, GravityRun> runs) {
    return new PlantResult(
        loads,
        total,
        modes,
        other,
        days,
        settledDay,
        recycling,
        units,
        sizing,
        outages,
        found,
        runs);
  }

  /**
   * A week without one separator or pump, from a day on that repeats itself.
   *
   * @param what the separator, or the stream of the pump
   * @param part whether it is a pump, the screw of a box or another separator
   * @param recovery sand recovered of the sand flushed in that week
   * @param liquor total solids of the liquor that leaves for good on the last day; of what the pits
   *     hold where none leaves
   * @param spilledM3 what spills over the brim of pits [m3]
   * @param storedM3 what flows to the storages in the week [m3]
   * @param storedSandKg sand that flows there in the week [kg]
   * @param fullest the pit that is fullest at any time; empty without pits
   * @param fullestShare its volume then, over its capacity
   * @param fullAfterS time in which the sand that settles fills a box whose screw is out [s]
   * @param comesBack whether the plant comes back to what it was, the unit running again
   */
  // More than ten components: a row of the table of outages, which shows each.
  public record Outage(
      String what,
      Part part,
      double recovery,
      double liquor,
      double spilledM3,
      double storedM3,
      double storedSandKg,
      String fullest,
      double fullestShare,
      OptionalDouble fullAfterS,
      boolean comesBack) {
    /** The same week, said of something else that is out. */
    Outage of(String other, Part of, OptionalDouble full) {
      return new Outage(
          other,
          of,
          recovery,
          liquor,
          spilledM3,
          storedM3,
          storedSandKg,
          fullest,
          fullestShare,
          full,
          comesBack);
    }
  }

  /**
   * The mode that runs longest.
   *
   * @return the mode
   */
  public ModeResult main() {
    return longest(modes);
  }

  /**
   * The mode that runs longest, the first of equals.
   *
   * @param modes the modes
   * @return the mode
   */
  public static ModeResult longest(List<ModeResult> modes) {
    return modes.stream()
        .reduce((one, next) -> next.share() > one.share() ? next : one)
        .orElseThrow();
  }

  /**
   * A mode and its steady state.
   *
   * @param mode the mode
   * @param state its steady state, or why there is none
   * @param sheet the streams between the units; empty without a steady state
   * @param liquor what the loop thickens to, present with a steady state
   * @param clogged the other steady state, to which a start from thick liquor leads; empty when it
   *     leads to the same
   */
  public record ModeResult(
      ModeSpec mode,
      SteadyState state,
      List<FlowEdge> sheet,
      Optional<LiquorLimit> liquor,
      Optional<Clogged> clogged) {
    /** Copies the list. */
    public ModeResult {
      sheet = List.copyOf(sheet);
    }

    /**
     * The share of the day that it runs.
     *
     * @return the share
     */
    public double share() {
      return (mode.toS() - mode.fromS()) / sandslurry.units.InUnit.DAY.si(1);
    }

    /**
     * The balance.
     *
     * @return the balance, empty when there is none
     */
    public Optional<SteadyBalance> balance() {
      return state.balance();
    }

    /**
     * The failure.
     *
     * @return why there is no steady state, empty when there is one
     */
    public Optional<NoSteadyState> failure() {
      return state.failure();
    }
  }

  /**
   * The steady state that a plant comes to from pits full of thick liquor, where that is another
   * than from pits full of water.
   *
   * @param thin what the loop thickens to from water
   * @param thick the same from thick liquor; empty when it comes to no rest from there
   * @param startSolids total solids of the liquor that the pits were filled with
   * @param tips total solids of liquor in the pits from which on the plant does not come back by
   *     itself
   */
  public record Clogged(
      LiquorLimit thin, Optional<LiquorLimit> thick, double startSolids, double tips) {}

  /**
   * A stream between two units, for the drawing of flows.
   *
   * @param stream its name
   * @param from the unit, pen or "water" that it comes from
   * @param to the unit that takes it, or the use it is put to
   * @param flowM3ps volume flow [m3/s]
   * @param sandKgps dry sand in it [kg/s]
   */
  public record FlowEdge(String stream, String from, String to, double flowM3ps, double sandKgps) {}

  /**
   * What the liquor thickens to, by balance and by the two numbers behind it.
   *
   * @param solidsNotCaughtKgps sand-free dry matter that reaches the storages [kg/s]
   * @param netWaterKgps water that reaches the storages [kg/s]
   * @param analytic S / (S + W) from what comes in less what is taken out
   * @param solved total solids of what reaches the storages, by the solver
   * @param dissolved dissolved solids over dissolved solids and water there
   * @param sandCapture sand recovered over sand flushed
   */
  public record LiquorLimit(
      double solidsNotCaughtKgps,
      double netWaterKgps,
      double analytic,
      double solved,
      double dissolved,
      double sandCapture) {}

  /**
   * The plant with all recycle pumps at a multiple of their flow, in its longest mode.
   *
   * @param factor the multiple
   * @param recycledM3ps liquor that is recycled [m3/s]
   * @param liquor what comes of it; empty when there is no steady state
   */
  public record Recycling(double factor, double recycledM3ps, Optional<LiquorLimit> liquor) {}

  /**
   * Purge and fresh water, each sized on its own to bring the sand recovery to its target.
   *
   * @param looked whether anything was looked for: the target is missed, and water may grow or
   *     liquor is recycled
   * @param added fresh water added to all that flows already; empty when no amount that can be had
   *     does it
   * @param replaced recycled liquor let go as purge, with as much fresh water in its place; empty
   *     when not even all of it, as far as water can be had, does it
   */
  public record WaterSizing(boolean looked, Optional<Sized> added, Optional<Sized> replaced) {
    /** Nothing was looked for. */
    public static final WaterSizing NONE =
        new WaterSizing(false, Optional.empty(), Optional.empty());
  }

  /**
   * A remedy that does it, and what comes of it over the day.
   *
   * @param amountM3ps how much [m3/s]
   * @param capture sand recovered over sand flushed
   * @param liquor total solids of what reaches the storages
   * @param surplusM3ps liquor that reaches the storages [m3/s]
   * @param surplusBeforeM3ps the same without the remedy [m3/s]
   */
  public record Sized(
      double amountM3ps,
      double capture,
      double liquor,
      double surplusM3ps,
      double surplusBeforeM3ps) {}

  /**
   * Which day the accounts are kept over.
   *
   * @param byDay true for the day by schedule, false for the modes at their own steady states,
   *     weighted by their hours
   * @param day number of the day by schedule that was looked at; 0 when there was none
   * @param change greatest change of anything that leaves against the day before, as a share of
   *     what comes in
   * @param kept what came in that day and did not leave, as a share of what came in, of the
   *     constituent of which that is most: what the pits took up or spilled, less than nothing when
   *     they gave some back
   * @param why the reason in a sentence
   * @param compared results by that day and by the modes at rest
   * @param lowestBy the case at the low end of the capture, in words; empty when it has no width
   * @param unsettled the cases of the range in which a mode comes to no steady state, in words:
   *     they are not in the ranges of the accounts
   */
  public record Basis(
      boolean byDay,
      int day,
      double change,
      double kept,
      String why,
      List<Compared> compared,
      Optional<String> lowestBy,
      List<String> unsettled) {
    /** Copies the lists. */
    public Basis {
      compared = List.copyOf(compared);
      unsettled = List.copyOf(unsettled);
    }

    /**
     * The same with the cases of its ranges.
     *
     * @param lowest that at the low end of the capture, in words
     * @param out those that it leaves out, in words
     * @return the basis
     */
    public Basis of(Optional<String> lowest, List<String> out) {
      return new Basis(byDay, day, change, kept, why, compared, lowest, out);
    }
  }

  /**
   * A result by the day by schedule and by the modes at rest.
   *
   * @param what the result
   * @param kind how it is shown
   * @param byDay by the day by schedule
   * @param atRest by the modes at rest, weighted by their hours
   */
  public record Compared(String what, Kind<?> kind, double byDay, double atRest) {}

  /**
   * Recovered sand as bedding.
   *
   * @param moisture water by mass, with its range
   * @param organicMatter organic matter in the dry matter, with its range
   */
  public record Bed(Range moisture, Range organicMatter) {}

  /**
   * Sands on one sieve of the gradation wanted.
   *
   * @param limit what may pass
   * @param bought share of the sand bought that passes
   * @param recovered share of the recovered sand that passes, all bedding being new
   * @param circulating share of the bedding that passes when the sand circulates at rest
   */
  public record SieveCheck(
      StandardSand.Limit limit, double bought, double recovered, double circulating) {
    /**
     * Whether a share that passes is outside the limits.
     *
     * @param passing the share
     * @return below 0 when too little passes, above 0 when too much does, 0 when it is inside
     */
    public int outside(double passing) {
      double rounding = 1e-9;
      return passing < limit.least() - rounding ? -1 : passing > limit.most() + rounding ? 1 : 0;
    }
  }

  /**
   * A month of the year of a plant.
   *
   * @param month its weather, and the temperature of its liquor
   * @param capture sand recovered of the sand flushed; empty when a mode comes to no steady state
   * @param liquor total solids of what reaches the storages; empty likewise
   */
  public record MonthResult(MonthSpec month, OptionalDouble capture, OptionalDouble liquor) {}

  /**
   * The year of a plant.
   *
   * @param months its months in order
   * @param storages the course of each storage, by name
   */
  public record Year(List<MonthResult> months, Map<String, StorageYear> storages) {
    /** Copies list and map. */
    public Year {
      months = List.copyOf(months);
      storages = PlantMaps.ordered(storages);
    }

    /**
     * The month of the coldest liquor; of equals that with the coldest air.
     *
     * @return the month
     */
    public MonthResult coldest() {
      return months.stream()
          .min(
              Comparator.comparingDouble((MonthResult one) -> one.month().liquorK())
                  .thenComparingDouble(one -> one.month().airK()))
          .orElseThrow();
    }

    /**
     * The month that recovers least, the coldest one of equals.
     *
     * @return the month; empty when no month has a recovery
     */
    public Optional<MonthResult> least() {
      return months.stream()
          .filter(one -> one.capture().isPresent())
          .min(
              Comparator.comparingDouble((MonthResult one) -> one.capture().getAsDouble())
                  .thenComparingDouble(one -> one.month().airK()));
    }
  }

  /**
   * The sand that circulates.
   *
   * @param asNew as if each class were caught as of new sand
   * @param atRest put back through the units; empty when the plant comes to no rest with it
   */
  public record Circulation(SandCycle asNew, Optional<PlantCirculation.State> atRest) {
    /**
     * Its gradation that no longer changes.
     *
     * @return the sand; empty when the plant comes to no rest with it
     */
    public Optional<SandCirculation> sand() {
      return atRest.map(PlantCirculation.State::rest);
    }
  }

  /**
   * Recovered sand as bedding.
   *
   * @param quality water and organic matter in it; empty when there is none
   * @param sieves the sands on the sieves of the gradation wanted; empty when none is wanted
   */
  public record Bedding(Optional<Bed> quality, List<SieveCheck> sieves) {
    /** Copies the list. */
    public Bedding {
      sieves = List.copyOf(sieves);
    }
  }

  /**
   * The liquor over a day.
   *
   * @param solids total solids of what reaches the storages, with its range
   * @param timeConstantS what the pits hold at rest over what comes in and is not caught; empty
   *     when nothing is held
   */
  public record LiquorAccount(Range solids, OptionalDouble timeConstantS) {}

  /**
   * The figures of all accounts.
   *
   * @param groups the figures, by heading
   * @param notCounted what takes energy and is not counted
   * @param missingPrices the prices that were not given, in words
   */
  public record AccountFigures(
      Map<String, List<Figure>> groups, List<String> notCounted, List<String> missingPrices) {
    /** Copies lists and map. */
    public AccountFigures {
      groups = PlantMaps.ordered(groups);
      notCounted = List.copyOf(notCounted);
      missingPrices = List.copyOf(missingPrices);
    }

    /**
     * A figure of an account.
     *
     * @param heading how the heading of its account begins
     * @param what what the figure is, or a part of it
     * @return the first such figure; empty when there is none
     */
    public Optional<Figure> of(String heading, String what) {
      return groups.entrySet().stream()
          .filter(group -> group.getKey().startsWith(heading))
          .flatMap(group -> group.getValue().stream())
          .filter(figure -> figure.what().contains(what))
          .findFirst();
    }
  }

  /**
   * What would keep the capture at its target.
   *
   * @param waterM3ps least extra fresh water; empty when none that can be had does or no water has
   *     a most [m3/s]
   * @param waterFor stream of the water that was tried; empty when none may grow
   * @param area by what factor all settling areas must grow, less one; empty when ten times is too
   *     little
   */
  public record CaptureRemedies(
      OptionalDouble waterM3ps, Optional<String> waterFor, OptionalDouble area) {}

  /**
   * The accounts over a day.
   *
   * @param sand the sand account, all bedding being new
   * @param circulation the sand that circulates
   * @param bedding the recovered sand
   * @param capture sand recovered over sand flushed, with its range
   * @param liquor what reaches the storages
   * @param figures the figures of all accounts
   * @param storages the account of each storage, by name
   * @param year the months of the year; empty where none are given
   * @param basis which day they are kept over, in which cases
   * @param remedies what would keep the capture at its target
   */
  public record Accounts(
      SandAccount sand,
      Circulation circulation,
      Bedding bedding,
      Range capture,
      LiquorAccount liquor,
      AccountFigures figures,
      Map<String, StorageAccount> storages,
      Optional<Year> year,
      Basis basis,
      CaptureRemedies remedies) {
    /** Copies the map. */
    public Accounts {
      storages = PlantMaps.ordered(storages);
    }
  }
}
