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
import sandslurry.assessment.plant.Figure;
import sandslurry.assessment.plant.PlantCirculation;
import sandslurry.assessment.plant.PlantCirculation.State;
import sandslurry.assessment.plant.PlantDay;
import sandslurry.assessment.plant.PlantMeanDay;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantModel.Case;
import sandslurry.assessment.plant.PlantModel.End;
import sandslurry.assessment.plant.PlantModel.Liquors;
import sandslurry.assessment.plant.PlantResult.Accounts;
import sandslurry.assessment.plant.PlantResult.Bed;
import sandslurry.assessment.plant.PlantResult.ModeResult;
import sandslurry.assessment.plant.PlantResult.SieveCheck;
import sandslurry.assessment.plant.PlantTotals;
import sandslurry.assessment.plant.Spread;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.station.PumpResult;
import sandslurry.design.plant.PlantSpec;
import sandslurry.design.plant.PlantSpec.ModeSpec;
import sandslurry.design.plant.PlantSpec.WaterSpec;
import sandslurry.design.plant.UnitSpec;
import sandslurry.design.plant.UnitSpec.BoxSpec;
import sandslurry.design.plant.UnitSpec.CycloneSpec;
import sandslurry.design.plant.UnitSpec.LaneUnitSpec;
import sandslurry.design.plant.UnitSpec.PitSpec;
import sandslurry.design.plant.UnitSpec.StorageSpec;
import sandslurry.material.liquid.Carriers;
import sandslurry.material.sand.StandardSand;
import sandslurry.numeric.UnsolvedException;
import sandslurry.plant.Range;
import sandslurry.plant.Stream;
import sandslurry.plant.account.BedQuality;
import sandslurry.plant.account.Remedy;
import sandslurry.plant.account.SandAccount;
import sandslurry.plant.account.SandCycle;
import sandslurry.plant.account.StorageAccount;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.schedule.DayRun;
import sandslurry.plant.unit.Liquor;
import sandslurry.separation.capture.Outlook;
import sandslurry.separation.cyclone.HydrocycloneModels;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/** Puts the accounts of a plant together: sand, bedding, storage, water, energy, cost. */
public final class PlantAccounts {
  private static final double MOST_AREA = 9;
  private final PlantModel model;
  private final PlantSpec spec;
  private final PlantTotals totals;
  private final List<ModeResult> modes;
  private final PlantDay day;
  private final Spread<PlantMeanDay> days;
  private final Optional<Spread<State>> rest;
  private final OptionalDouble extraWater;
  private final OptionalDouble extraArea;

  public PlantAccounts(PlantModel model, PlantTotals totals, List<ModeResult> modes, DayRun days) {
    this.model = model;
    this.spec = model.spec();
    this.totals = totals;
    this.modes = modes;
    this.day = PlantDay.of(model, totals, modes, days);
    PlantCirculation circulation = new PlantCirculation(model, totals, day);
    List<Both> cases =
        cases().stream().map(one -> both(one, circulation)).flatMap(Optional::stream).toList();
    this.days =
        new Spread<>(mean(Case.BASE, day.streams()), cases.stream().map(Both::mean).toList());
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
    boolean settles =
        spec.units().stream().anyMatch(u -> u instanceof BoxSpec || u instanceof LaneUnitSpec);
    this.extraArea =
        settles
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

  private Map<String, Stream> streams(Map<ModeSpec, SteadyBalance> balances) {
    return day.byDay(totals, PlantDay.weighted(model, balances));
  }

  private PlantMeanDay mean(Case one, Map<String, Stream> streams) {
    return new PlantMeanDay(model, totals, one, streams);
  }

  private Optional<Both> both(Case one, PlantCirculation circulation) {
    return PlantDay.atRest(model, one, Map.of())
        .map(balances -> new Both(mean(one, streams(balances)), circulation.rest(one, balances)));
  }

  /** The accounts, with the energy of the line when there is one. */
  public Accounts accounts(Optional<ServiceResult.Day> lineDay, Optional<PumpResult> linePump) {
    PlantMeanDay base = days.base();
    SandAccount sand = base.sand();
    List<Double> recovery = new ArrayList<>();
    for (int k = 0; k < model.constituents().sandClasses().size(); k++) {
      double bedded = sand.bedded().sandKgps(k);
      double back = sand.recovered().sandKgps(k) * spec.rebeddedShare();
      recovery.add(bedded > 0 ? Math.min(1, back / bedded) : 0);
    }
    SandCycle cycle =
        SandCycle.of(model.constituents().sandClasses(), recovery, sand.bedded().sandKgps());
    Map<String, StorageAccount> storages = new LinkedHashMap<>();
    totals.storages().forEach(storage -> storages.put(storage.name(), base.storage(storage)));
    PlantEnergy energy = PlantEnergy.of(model, modes, sand.flushed(), lineDay, linePump);
    Map<String, List<Figure>> groups = new LinkedHashMap<>();
    PlantSandFigures sands = new PlantSandFigures(model, days);
    groups.put("Sand, all of it new", sands.ofNewSand());
    rest.ifPresent(
        states ->
            groups.put("Sand that circulates, at rest", PlantSandFigures.atRest(states, cycle)));
    sands.ofBedding().ifPresent(figures -> groups.put("Recovered sand as bedding", figures));
    for (StorageSpec storage : totals.storages()) {
      List<Figure> figures = PlantStorageFigures.of(storage, days, spec.targets().storageDays());
      rest.ifPresent(
          states ->
              figures.add(
                  states.figure(
                      "sand that settles in a year, circulating at rest, in bulk",
                      Kind.VOLUME,
                      s ->
                          s.account().lost().get(storage.name()).sandKgps()
                              * InUnit.ofDays(PlantTotals.YEAR_D)
                              / totals.sandBulkKgM3())));
      groups.put("Storage: " + storage.name(), figures);
    }
    groups.put("Water", waterFigures());
    groups.put("Energy", energy.figures());
    Optional<PlantCosts> costs = rest.map(states -> costs(states, energy));
    costs.ifPresent(
        c -> groups.put("What reaches storage in a year, and what it costs", c.figures()));
    return new Accounts(
        sand,
        cycle,
        rest.map(states -> states.base().rest()),
        rest.map(states -> states.base().account()),
        bed(),
        rest.map(states -> gradation(states.base())).orElse(List.of()),
        days.range(PlantMeanDay::capture),
        days.range(m -> totals.limit(m.streams()).solved()),
        groups,
        storages,
        day.basis(),
        energy.notCounted(),
        costs.map(PlantCosts::missing).orElse(List.of()),
        extraWater,
        growing().map(WaterSpec::stream),
        extraArea,
        timeConstant());
  }

  private Optional<Bed> bed() {
    if (!(days.base().recovered().sandKgps() > 0)) {
      return Optional.empty();
    }
    Spread<PlantMeanDay> some = days.where(m -> m.recovered().sandKgps() > 0);
    return Optional.of(
        new Bed(
            some.base().bed(),
            some.range(m -> m.bed().moisture()),
            some.range(m -> m.bed().organicMatter())));
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
    double second = InUnit.ofDays(PlantTotals.YEAR_D);
    Range bought = rest.range(s -> PlantSandFigures.grains(s.rest().bought()) * second);
    Range lost =
        rest.range(
            s -> s.account().lost().values().stream().mapToDouble(Stream::sandKgps).sum() * second);
    Range stored = rest.range(s -> storedSand(s.account()) * second);
    Range hauled = days.range(PlantMeanDay::hauledPerYearM3);
    Range cleaned =
        spec.accounting().sandReachingPlant().low() < 1
            ? days.range(m -> m.sand().beforeThePlantKgps() * second / totals.sandBulkKgM3())
            : Range.of(0);
    Range water = days.range(m -> m.water().freshPerDayM3() * PlantTotals.YEAR_D);
    Range joules = energy.perDayJ().map(j -> j * PlantTotals.YEAR_D);
    return PlantCosts.of(
        spec.accounting().prices(),
        new PlantCosts.Year(bought, lost, stored, hauled, cleaned, joules, water));
  }

  private double storedSand(SandAccount account) {
    return totals.storages().stream()
        .mapToDouble(storage -> account.lost().get(storage.name()).sandKgps())
        .sum();
  }

  /** The least of a change that brings the sand recovery to its target, if any does. */
  OptionalDouble remedy(String what, DoubleFunction<Case> change, double target, double most) {
    if (!(most > 0)) {
      return OptionalDouble.empty();
    }
    try {
      return Remedy.least(
          what, x -> streams(change.apply(x)).map(totals::capture).orElse(0.0), target, most);
    } catch (UnsolvedException e) {
      return OptionalDouble.empty();
    }
  }

  /** Every combination of the ends of the inputs that have a range, and of the outlooks. */
  private List<Case> cases() {
    boolean manure = spec.pens().stream().anyMatch(pen -> pen.pen().manureFactor().hasWidth());
    boolean sand = spec.pens().stream().anyMatch(pen -> pen.pen().sandKgps().hasWidth());
    boolean water = spec.pens().stream().anyMatch(pen -> pen.pen().waterM3ps().hasWidth());
    boolean reaching = spec.accounting().sandReachingPlant().hasWidth();
    List<Case> cases = new ArrayList<>();
    for (Function<Range, Double> s : ends(sand)) {
      for (Function<Range, Double> r : ends(reaching)) {
        for (Function<Range, Double> w : ends(water)) {
          for (Function<Range, Double> m : ends(manure)) {
            cases.add(Case.of(s, r, w, m));
          }
        }
      }
    }
    if (cases.size() == 1) {
      cases.clear();
    }
    boolean cyclones = spec.units().stream().anyMatch(CycloneSpec.class::isInstance);
    cases.add(Case.BASE.in(Liquors.thick(Carriers.FARM_SCATTER)));
    cases.add(Case.BASE.in(Liquors.thick(1 / Carriers.FARM_SCATTER)));
    model.seasonsK().forEach(kelvin -> cases.add(Case.BASE.in(Liquors.at(kelvin))));
    if (cyclones) {
      HydrocycloneModels.FAMILY.all().forEach(by -> cases.add(Case.BASE.in(Liquors.cutting(by))));
    }
    cases.add(Case.BASE.seen(Outlook.CAUTIOUS));
    cases.add(Case.BASE.seen(Outlook.HOPEFUL));
    cases.add(Case.BASE.clean(End.LOW));
    cases.add(Case.BASE.clean(End.HIGH));
    return cases;
  }

  private static List<Function<Range, Double>> ends(boolean width) {
    return width ? List.of(Range::low, Range::high) : List.of(Range::base);
  }

  private List<Figure> waterFigures() {
    return List.of(
        days.figure("fresh water in a day", Kind.VOLUME, m -> m.water().freshPerDayM3()),
        days.figure("recycled liquor in a day", Kind.VOLUME, m -> m.water().recycledPerDayM3()),
        days.figure("recycled of all liquid used", Kind.PERCENT, m -> m.water().recycledShare()));
  }

  private OptionalDouble timeConstant() {
    ModeResult main = modes.get(0);
    for (ModeResult mode : modes) {
      main = mode.share() > main.share() ? mode : main;
    }
    SteadyBalance balance = main.balance().orElseThrow();
    double held = 0;
    for (UnitSpec unit : spec.units()) {
      if (unit instanceof PitSpec pit) {
        held += pit.pit().atRest(balance).solidsKgps();
      }
    }
    double inflow = main.liquor().orElseThrow().solidsNotCaughtKgps();
    return held > 0 && inflow > 0
        ? OptionalDouble.of(Liquor.timeConstantS(held, inflow))
        : OptionalDouble.empty();
  }
}
