package sandslurry.assessment.plant.account;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import sandslurry.assessment.plant.PlantCirculation;
import sandslurry.assessment.plant.PlantCirculation.State;
import sandslurry.assessment.plant.PlantDay;
import sandslurry.assessment.plant.PlantMeanDay;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantModel.Case;
import sandslurry.assessment.plant.PlantModel.End;
import sandslurry.assessment.plant.PlantModel.Liquors;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantResult.AccountFigures;
import sandslurry.assessment.plant.PlantResult.Accounts;
import sandslurry.assessment.plant.PlantResult.Basis;
import sandslurry.assessment.plant.PlantResult.Bed;
import sandslurry.assessment.plant.PlantResult.Bedding;
import sandslurry.assessment.plant.PlantResult.CaptureRemedies;
import sandslurry.assessment.plant.PlantResult.Circulation;
import sandslurry.assessment.plant.PlantResult.LiquorAccount;
import sandslurry.assessment.plant.PlantResult.ModeResult;
import sandslurry.assessment.plant.PlantResult.SieveCheck;
import sandslurry.assessment.plant.PlantTotals;
import sandslurry.assessment.plant.Spread;
import sandslurry.design.plant.PlantSpec;
import sandslurry.design.plant.PlantSpec.ModeSpec;
import sandslurry.design.plant.PlantSpec.WaterSpec;
import sandslurry.material.liquid.Carriers;
import sandslurry.material.sand.StandardSand;
import sandslurry.numeric.UnsolvedException;
import sandslurry.plant.Figure;
import sandslurry.plant.Range;
import sandslurry.plant.Stream;
import sandslurry.plant.account.BedQuality;
import sandslurry.plant.account.Remedy;
import sandslurry.plant.account.SandAccount;
import sandslurry.plant.account.SandCycle;
import sandslurry.plant.account.StorageAccount;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.pen.Pen;
import sandslurry.plant.schedule.Day;
import sandslurry.plant.schedule.DayRun;
import sandslurry.plant.unit.Liquor;
import sandslurry.plant.unit.PitUnit;
import sandslurry.plant.unit.PlantUnit.Role;
import sandslurry.plant.unit.StorageUnit;
import sandslurry.separation.capture.Outlook;
import sandslurry.separation.cyclone.HydrocycloneModel;
import sandslurry.separation.cyclone.HydrocycloneModels;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/** Puts the accounts of a plant together: sand, bedding, storage, water, energy, cost. */
public final class PlantAccounts {
  private static final double MOST_AREA = 9;
  private static final List<End> BOTH = List.of(End.LOW, End.HIGH);
  private static final List<End> EXPECTED = List.of(End.BASE);

  private final PlantModel model;
  private final PlantSpec spec;
  private final List<ModeResult> modes;
  private final PlantDay day;
  private final Basis basis;
  private final PlantYear year;
  private final Spread<PlantMeanDay> days;
  private final Optional<Spread<State>> rest;
  private final Function<Case, Optional<Day>> dayIn;
  private final OptionalDouble extraWater;
  private final OptionalDouble extraArea;

  /**
   * The accounts of a plant, over all cases of its ranges.
   *
   * @param model the plant
   * @param modes each mode at its steady state
   * @param days the day by schedule
   * @param dayIn a day that follows it in another case
   */
  public PlantAccounts(
      PlantModel model, List<ModeResult> modes, DayRun days, Function<Case, Optional<Day>> dayIn) {
    this.model = model;
    this.dayIn = dayIn;
    this.spec = model.spec();
    this.modes = modes;
    this.day = PlantDay.of(model, modes, days);
    this.year = new PlantYear(model, day, modes);
    PlantCirculation circulation = new PlantCirculation(model, day);
    Map<String, Both> settled = new LinkedHashMap<>();
    List<String> unsettled = new ArrayList<>();
    cases()
        .forEach(
            (name, one) ->
                both(one, circulation)
                    .ifPresentOrElse(both -> settled.put(name, both), () -> unsettled.add(name)));
    List<Both> cases = List.copyOf(settled.values());
    this.days =
        new Spread<>(
            new PlantMeanDay(model, Case.BASE, day.streams(), year.flows()),
            cases.stream().map(Both::mean).toList());
    Optional<String> lowestBy =
        settled.entrySet().stream()
            .filter(one -> one.getValue().mean().capture() < this.days.base().capture())
            .min(Comparator.comparingDouble(one -> one.getValue().mean().capture()))
            .map(Map.Entry::getKey);
    this.basis = day.basis().of(lowestBy, unsettled);
    Map<ModeSpec, SteadyBalance> balances = new LinkedHashMap<>();
    modes.forEach(mode -> balances.put(mode.mode(), mode.balance().orElseThrow()));
    List<State> rests = cases.stream().map(Both::circulating).flatMap(Optional::stream).toList();
    this.rest = circulation.rest(Case.BASE, balances).map(state -> new Spread<>(state, rests));
    double target = spec.targets().sandCapture();
    this.extraWater =
        growing()
            .map(
                water ->
                    remedy(
                        "fresh water",
                        Case.BASE::withWater,
                        target,
                        water.mostM3ps().getAsDouble()))
            .orElse(OptionalDouble.empty());
    this.extraArea =
        spec.has(Role.SETTLES)
            ? remedy("settling area", x -> Case.BASE.withArea(1 + x), target, MOST_AREA)
            : OptionalDouble.empty();
  }

  /** A case: with new sand in the stalls, and with the sand that circulates. */
  private record Both(PlantMeanDay mean, Optional<State> circulating) {}

  private Optional<WaterSpec> growing() {
    return spec.waters().stream().filter(w -> w.mostM3ps().isPresent()).findFirst();
  }

  /** The mean flows of a day in another case; empty when a mode has no steady state in it. */
  Optional<Map<String, Stream>> streams(Case one) {
    return PlantDay.atRest(model, one, Map.of()).map(this::streams);
  }

  /** Of units that see batches as they come, an outlook on capture needs a day of its own. */
  private Map<String, Stream> streams(Case one, Map<ModeSpec, SteadyBalance> balances) {
    boolean outlook = one.outlook() != Outlook.LIKELY;
    return outlook && day.basis().byDay() && !model.batches().isEmpty()
        ? dayIn
            .apply(one)
            .map(run -> day.byDay(model.totals(), PlantDay.weighted(model, balances), run))
            .orElseGet(() -> streams(balances))
        : streams(balances);
  }

  private Map<String, Stream> streams(Map<ModeSpec, SteadyBalance> balances) {
    return day.byDay(model.totals(), PlantDay.weighted(model, balances));
  }

  private PlantMeanDay mean(Case one, Map<String, Stream> streams) {
    return new PlantMeanDay(model, one, streams, List.of());
  }

  private Optional<Both> both(Case one, PlantCirculation circulation) {
    return year.balances(one)
        .or(() -> PlantDay.atRest(model, one, Map.of()))
        .map(
            balances ->
                new Both(mean(one, streams(one, balances)), circulation.rest(one, balances)));
  }

  /**
   * The accounts, with the energy of the lines.
   *
   * @param lines what the pumps of each line do
   * @return sand, bedding, storage, water, energy and cost
   */
  public Accounts accounts(List<LineDuty> lines) {
    PlantMeanDay base = days.base();
    SandAccount sand = base.sand();
    Map<String, StorageAccount> storages = new LinkedHashMap<>();
    spec.storages().forEach(storage -> storages.put(storage.name(), base.storage(storage)));
    PlantEnergy energy = PlantEnergy.of(model, modes, base, lines);
    Map<String, List<Figure>> groups = new LinkedHashMap<>();
    PlantSandFigures sands = new PlantSandFigures(model, days);
    groups.put("Sand, all of it new", sands.ofNewSand());
    rest.ifPresent(
        states -> {
          groups.put("Sand that circulates, at steady state", PlantSandFigures.atRest(states));
          groups.put("Sand to buy", toBuy(states));
        });
    sands.ofBedding().ifPresent(figures -> groups.put("Recovered sand as bedding", figures));
    for (StorageUnit storage : spec.storages()) {
      List<Figure> figures = PlantStorageFigures.of(storage, days, spec.targets().storageDays());
      rest.ifPresent(
          states ->
              figures.add(
                  states.figure(
                      "sand that settles in a year, circulating at steady state, in bulk",
                      Kind.VOLUME,
                      s ->
                          s.account().lost().get(storage.name()).sandKgps()
                              * InUnit.DAY.si(PlantTotals.YEAR_D)
                              / model.totals().sandBulkKgM3())));
      groups.put("Storage: " + storage.name(), figures);
    }
    List<Figure> pits = pitFigures();
    if (!pits.isEmpty()) {
      groups.put(PlantTotals.PITS, pits);
    }
    groups.put("Water", waterFigures());
    groups.put("Energy", energy.figures());
    Optional<PlantCosts> costs = rest.map(states -> costs(states, energy));
    costs.ifPresent(
        c -> groups.put("What reaches storage in a year, and what it costs", c.figures()));
    return new Accounts(
        sand,
        new Circulation(cycle(sand), rest.map(Spread::base)),
        new Bedding(bed(), rest.map(states -> gradation(states.base())).orElse(List.of())),
        days.range(PlantMeanDay::capture),
        new LiquorAccount(
            days.range(m -> model.totals().limit(m.streams()).solved()), timeConstant()),
        new AccountFigures(
            groups, energy.notCounted(), costs.map(PlantCosts::missing).orElse(List.of())),
        storages,
        year.year(base),
        basis,
        new CaptureRemedies(extraWater, growing().map(WaterSpec::stream), extraArea));
  }

  private SandCycle cycle(SandAccount sand) {
    List<Double> recovery = new ArrayList<>();
    for (int k = 0; k < model.constituents().sandClasses().size(); k++) {
      double bedded = sand.bedded().sandKgps(k);
      double back = sand.recovered().sandKgps(k) * spec.rebeddedShare();
      recovery.add(bedded > 0 ? Math.min(1, back / bedded) : 0);
    }
    return SandCycle.of(model.constituents().sandClasses(), recovery, sand.bedded().sandKgps());
  }

  private List<Figure> toBuy(Spread<State> states) {
    PlantSpec.Prices prices = spec.accounting().prices();
    return new PlantBudget(states).figures(prices.sandPerKg(), prices.currency());
  }

  private Optional<Bed> bed() {
    if (!(days.base().recovered().sandKgps() > 0)) {
      return Optional.empty();
    }
    Spread<PlantMeanDay> some = days.where(m -> m.recovered().sandKgps() > 0);
    return Optional.of(
        new Bed(some.range(m -> m.bed().moisture()), some.range(m -> m.bed().organicMatter())));
  }

  /** The sands on every sieve of the gradation wanted; none when none is wanted. */
  private List<SieveCheck> gradation(State rest) {
    Stream recovered = days.base().recovered();
    if (!(recovered.sandKgps() > 0) || spec.targets().gradation().isEmpty()) {
      return List.of();
    }
    return spec.targets().gradation().get().limits().stream()
        .sorted(Comparator.comparingDouble(StandardSand.Limit::sizeM).reversed())
        .map(
            limit ->
                new SieveCheck(
                    limit,
                    BedQuality.passing(model.bedded(Case.BASE), limit.sizeM()),
                    BedQuality.passing(recovered, limit.sizeM()),
                    BedQuality.passing(rest.rest().bedded(), limit.sizeM())))
        .toList();
  }

  private PlantCosts costs(Spread<State> rest, PlantEnergy energy) {
    double second = InUnit.DAY.si(PlantTotals.YEAR_D);
    Range bought = rest.range(s -> PlantSandFigures.grains(s.rest().bought()) * second);
    Range lost =
        rest.range(
            s -> s.account().lost().values().stream().mapToDouble(Stream::sandKgps).sum() * second);
    Range hauled = days.range(PlantMeanDay::hauledPerYearM3);
    Range cleaned =
        spec.accounting().sandReachingPlant().low() < 1
            ? days.range(
                m -> m.sand().beforeThePlantKgps() * second / model.totals().sandBulkKgM3())
            : Range.of(0);
    Range water = days.range(m -> m.water().freshPerDayM3() * PlantTotals.YEAR_D);
    Range joules = energy.perDayJ().map(j -> j * PlantTotals.YEAR_D);
    return PlantCosts.of(
        spec.accounting().prices(),
        new PlantCosts.Year(bought, lost, hauled, cleaned, joules, water));
  }

  /** The least of a change that brings the sand recovery to its target, if any does. */
  OptionalDouble remedy(String what, DoubleFunction<Case> change, double target, double most) {
    if (!(most > 0)) {
      return OptionalDouble.empty();
    }
    try {
      return Remedy.least(
          what,
          x -> streams(change.apply(x)).map(model.totals()::capture).orElse(0.0),
          target,
          most);
    } catch (UnsolvedException e) {
      return OptionalDouble.empty();
    }
  }

  /**
   * Every combination of the ends of the inputs that have a range, and one by one the bands of what
   * is not known of the liquor, the season and the units.
   */
  private Map<String, Case> cases() {
    Map<String, Case> cases = new LinkedHashMap<>();
    for (End sand : ends(pen -> pen.sandKgps().hasWidth())) {
      for (End reaching : reaching()) {
        for (End water : ends(pen -> pen.waterM3ps().hasWidth())) {
          for (End manure : ends(pen -> pen.manureFactor().hasWidth())) {
            String name =
                List.of(
                        sand.word("sand"),
                        reaching.word("share of the sand that reaches the plant"),
                        water.word("water"),
                        manure.word("manure"))
                    .stream()
                    .filter(word -> !word.isEmpty())
                    .collect(Collectors.joining(", "));
            cases.put(name, Case.of(sand::of, reaching::of, water::of, manure::of));
          }
        }
      }
    }
    cases.remove("");
    cases.put("thicker liquor", Case.BASE.in(Liquors.thick(Carriers.FARM_SCATTER)));
    cases.put("thinner liquor", Case.BASE.in(Liquors.thick(1 / Carriers.FARM_SCATTER)));
    List<Double> seasons = model.seasonsK();
    for (int i = 0; i < seasons.size(); i++) {
      cases.put(season(i, seasons), Case.BASE.in(Liquors.at(seasons.get(i))));
    }
    if (spec.has(Role.SPINS)) {
      for (HydrocycloneModel by : HydrocycloneModels.FAMILY.all()) {
        cases.put("the cyclone by " + by.name(), Case.BASE.in(Liquors.cutting(by)));
      }
    }
    cases.put("conservative capture", Case.BASE.seen(Outlook.CAUTIOUS));
    cases.put("optimistic capture", Case.BASE.seen(Outlook.HOPEFUL));
    cases.put("dirtier sand", Case.BASE.clean(End.LOW));
    cases.put("cleaner sand", Case.BASE.clean(End.HIGH));
    return cases;
  }

  private static String season(int place, List<Double> seasonsK) {
    double there = seasonsK.get(place);
    return seasonsK.stream().allMatch(other -> there <= other)
        ? "the coldest liquor"
        : seasonsK.stream().allMatch(other -> there >= other)
            ? "the warmest liquor"
            : "season " + (place + 1) + " of " + seasonsK.size();
  }

  private List<End> ends(Predicate<Pen> width) {
    return spec.pens().stream().anyMatch(pen -> width.test(pen.pen())) ? BOTH : EXPECTED;
  }

  private List<End> reaching() {
    return spec.accounting().sandReachingPlant().hasWidth() ? BOTH : EXPECTED;
  }

  private List<Figure> pitFigures() {
    List<Figure> figures = new ArrayList<>();
    double mostS = InUnit.DAY.si(PlantTotals.MANY_YEARS * PlantTotals.YEAR_D);
    for (PitUnit pit : spec.pits()) {
      if (!pit.isPool()) {
        days.figureIfAny(
                pit.name(),
                Kind.DAYS,
                m -> pit.fillsS(m.streams().get(pit.settled()), spec.porosity(), mostS))
            .ifPresent(figures::add);
      }
    }
    return figures;
  }

  private List<Figure> waterFigures() {
    return List.of(
        days.figure("fresh water in a day", Kind.VOLUME, m -> m.water().freshPerDayM3()),
        days.figure("recycled liquor in a day", Kind.VOLUME, m -> m.water().recycledPerDayM3()),
        days.figure("recycled of all liquid used", Kind.PERCENT, m -> m.water().recycledShare()));
  }

  private OptionalDouble timeConstant() {
    ModeResult main = PlantResult.longest(modes);
    SteadyBalance balance = main.balance().orElseThrow();
    double held = 0;
    for (PitUnit pit : spec.pits()) {
      held += pit.pit().atRest(balance).solidsKgps();
    }
    double inflow = main.liquor().orElseThrow().solidsNotCaughtKgps();
    return held > 0 && inflow > 0
        ? OptionalDouble.of(Liquor.timeConstantS(held, inflow))
        : OptionalDouble.empty();
  }
}
