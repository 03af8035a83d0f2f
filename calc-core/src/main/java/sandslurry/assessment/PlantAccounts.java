package sandslurry.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import sandslurry.assessment.PlantModel.Case;
import sandslurry.assessment.PlantModel.End;
import sandslurry.assessment.PlantResult.Accounts;
import sandslurry.assessment.PlantResult.Bed;
import sandslurry.assessment.PlantResult.ModeResult;
import sandslurry.assessment.PlantResult.SieveCheck;
import sandslurry.circuit.BedQuality;
import sandslurry.circuit.Constituents;
import sandslurry.circuit.DayRun;
import sandslurry.circuit.Liquor;
import sandslurry.circuit.Range;
import sandslurry.circuit.Remedy;
import sandslurry.circuit.SandAccount;
import sandslurry.circuit.SandCycle;
import sandslurry.circuit.SteadyBalance;
import sandslurry.circuit.StorageAccount;
import sandslurry.circuit.Stream;
import sandslurry.circuit.WaterAccount;
import sandslurry.design.PlantSpec;
import sandslurry.design.PlantSpec.ModeSpec;
import sandslurry.design.PlantSpec.Use;
import sandslurry.design.PlantSpec.WaterSpec;
import sandslurry.design.UnitSpec;
import sandslurry.design.UnitSpec.BoxSpec;
import sandslurry.design.UnitSpec.LaneUnitSpec;
import sandslurry.design.UnitSpec.PitSpec;
import sandslurry.design.UnitSpec.StorageSpec;
import sandslurry.material.StandardSand;
import sandslurry.numeric.UnsolvedException;
import sandslurry.separation.Outlook;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/** Puts the accounts of a plant together: sand, bedding, storage, water, energy, cost. */
final class PlantAccounts {
  private static final double MOST_AREA = 9;
  private static final double YEAR_D = 365;

  private final PlantModel model;
  private final PlantSpec spec;
  private final PlantTotals totals;
  private final List<ModeResult> modes;
  private final PlantDay day;
  private final Mean base;
  private final List<Both> cases;
  private final Optional<PlantCirculation.State> rest;
  private final OptionalDouble extraWater;
  private final OptionalDouble extraArea;

  PlantAccounts(PlantModel model, PlantTotals totals, List<ModeResult> modes, DayRun days) {
    this.model = model;
    this.spec = model.spec();
    this.totals = totals;
    this.modes = modes;
    this.day = PlantDay.of(model, totals, modes, days);
    this.base = new Mean(Case.BASE, day.streams());
    PlantCirculation circulation = new PlantCirculation(model, totals, day);
    // Cases do not depend on each other, and the order of the list is kept.
    this.cases =
        cases().parallelStream()
            .map(one -> both(one, circulation))
            .flatMap(Optional::stream)
            .toList();
    Map<ModeSpec, SteadyBalance> balances = new LinkedHashMap<>();
    modes.forEach(mode -> balances.put(mode.mode(), mode.balance().orElseThrow()));
    this.rest = circulation.rest(Case.BASE, balances);
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

  /** The mean flows of a day in a case. */
  record Mean(Case of, Map<String, Stream> streams) {}

  /** A case: with new sand in the stalls, and with the sand that circulates. */
  private record Both(Mean mean, Optional<PlantCirculation.State> circulating) {}

  private Optional<WaterSpec> growing() {
    return spec.waters().stream().filter(w -> w.mostM3ps().isPresent()).findFirst();
  }

  /** The mean flows of a day in another case; empty when a mode has no steady state in it. */
  Optional<Map<String, Stream>> streams(Case one) {
    return mean(one).map(Mean::streams);
  }

  private Optional<Mean> mean(Case one) {
    return PlantDay.atRest(model, one, Map.of())
        .map(balances -> new Mean(one, day.byDay(totals, PlantDay.weighted(model, balances))));
  }

  private Optional<Both> both(Case one, PlantCirculation circulation) {
    return PlantDay.atRest(model, one, Map.of())
        .map(
            balances ->
                new Both(
                    new Mean(one, day.byDay(totals, PlantDay.weighted(model, balances))),
                    circulation.rest(one, balances)));
  }

  /** The accounts, with the energy of the line when there is one. */
  Accounts accounts(Optional<ServiceResult.Day> lineDay, Optional<PumpResult> linePump) {
    List<Mean> others = cases.stream().map(Both::mean).toList();
    List<PlantCirculation.State> otherRests =
        cases.stream().map(Both::circulating).flatMap(Optional::stream).toList();
    SandAccount sand = sand(base);
    List<Double> recovery = new ArrayList<>();
    for (int k = 0; k < model.constituents().sandClasses().size(); k++) {
      double bedded = sand.bedded().sandKgps(k);
      double back = sand.recovered().sandKgps(k) * spec.rebeddedShare();
      recovery.add(bedded > 0 ? Math.min(1, back / bedded) : 0);
    }
    SandCycle cycle =
        SandCycle.of(model.constituents().sandClasses(), recovery, sand.bedded().sandKgps());
    Map<String, StorageAccount> storages = new LinkedHashMap<>();
    totals.storages().forEach(storage -> storages.put(storage.name(), storage(storage, base)));
    PlantEnergy energy = PlantEnergy.of(model, modes, sand.flushed(), lineDay, linePump);
    Map<String, List<Figure>> groups = new LinkedHashMap<>();
    groups.put("Sand, all of it new", sandFigures(base, others));
    rest.ifPresent(
        state ->
            groups.put("Sand that circulates, at rest", restFigures(state, otherRests, cycle)));
    bedFigures(base, others).ifPresent(figures -> groups.put("Recovered sand as bedding", figures));
    for (StorageSpec storage : totals.storages()) {
      List<Figure> figures = storageFigures(storage, base, others);
      rest.ifPresent(
          state ->
              figures.add(
                  rest(
                      "sand that settles in a year, circulating at rest, in bulk",
                      Kind.VOLUME,
                      state,
                      otherRests,
                      s -> settlingPerYearM3(s, storage))));
      groups.put("Storage: " + storage.name(), figures);
    }
    groups.put("Water", waterFigures(base, others));
    groups.put("Energy", energy.figures());
    Optional<PlantCosts> costs = rest.map(state -> costs(base, others, state, otherRests, energy));
    costs.ifPresent(
        c -> groups.put("What reaches storage in a year, and what it costs", c.figures()));
    ToDoubleFunction<Mean> capture = m -> totals.capture(m.streams());
    return new Accounts(
        sand,
        cycle,
        rest.map(PlantCirculation.State::rest),
        rest.map(PlantCirculation.State::account),
        bed(base, others),
        rest.map(state -> gradation(base, state)).orElse(List.of()),
        Range.over(base, others, capture),
        Range.over(base, others, m -> totals.limit(m.streams()).solved()),
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

  private Optional<Bed> bed(Mean base, List<Mean> others) {
    if (!(recovered(base).sandKgps() > 0)) {
      return Optional.empty();
    }
    List<Mean> some = others.stream().filter(m -> recovered(m).sandKgps() > 0).toList();
    return Optional.of(
        new Bed(
            BedQuality.of(recovered(base)),
            Range.over(base, some, m -> BedQuality.of(recovered(m)).moisture()),
            Range.over(base, some, m -> BedQuality.of(recovered(m)).organicMatter())));
  }

  /** The sands on every sieve of the gradation wanted, or of concrete sand when none is. */
  private List<SieveCheck> gradation(Mean base, PlantCirculation.State rest) {
    Stream recovered = recovered(base);
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

  private PlantCosts costs(
      Mean base,
      List<Mean> others,
      PlantCirculation.State rest,
      List<PlantCirculation.State> otherRests,
      PlantEnergy energy) {
    double second = InUnit.ofDays(YEAR_D);
    Range bought = Range.over(rest, otherRests, state -> grains(state.rest().bought()) * second);
    Range lost =
        Range.over(
            rest,
            otherRests,
            state ->
                state.account().lost().values().stream().mapToDouble(Stream::sandKgps).sum()
                    * second);
    Range stored = Range.over(rest, otherRests, state -> storedSand(state.account()) * second);
    Range hauled = Range.over(base, others, this::hauledPerYearM3);
    double bulk = model.constituents().sandDensityKgM3() * (1 - spec.porosity());
    Range cleaned =
        spec.accounting().sandReachingPlant().low() < 1
            ? Range.over(base, others, m -> sand(m).beforeThePlantKgps() * second / bulk)
            : Range.of(0);
    Range water = Range.over(base, others, m -> water(m).freshPerDayM3() * YEAR_D);
    Range joules = energy.perDayJ().map(j -> j * YEAR_D);
    return PlantCosts.of(
        spec.accounting().prices(),
        new PlantCosts.Year(bought, lost, stored, hauled, cleaned, joules, water));
  }

  private static double grains(Stream stream) {
    return stream.sandKgps() + stream.kgps(Constituents.MINERAL_FINES);
  }

  private double storedSand(SandAccount account) {
    return totals.storages().stream()
        .mapToDouble(storage -> account.lost().get(storage.name()).sandKgps())
        .sum();
  }

  /** What must be hauled of the storages in a year; without storage, what leaves as waste. */
  private double hauledPerYearM3(Mean mean) {
    if (totals.storages().isEmpty()) {
      return totals.sum(mean.streams(), totals.products(Use.WASTE)).volumeM3ps()
          * InUnit.ofDays(YEAR_D);
    }
    double sum = 0;
    for (StorageSpec storage : totals.storages()) {
      StorageAccount account = storage(storage, mean);
      double days = 0;
      double net = 0;
      for (int i = 0; i < account.months().size(); i++) {
        net += account.netInflowM3(i);
        days += account.months().get(i).days();
      }
      sum += Math.max(0, net) * YEAR_D / days;
    }
    return sum;
  }

  private OptionalDouble remedy(
      String what, java.util.function.DoubleFunction<Case> change, double target, double most) {
    if (!(most > 0)) {
      return OptionalDouble.empty();
    }
    try {
      return Remedy.least(
          what,
          x -> mean(change.apply(x)).map(m -> totals.capture(m.streams())).orElse(0.0),
          target,
          most);
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
    cases.add(Case.BASE.seen(Outlook.CAUTIOUS));
    cases.add(Case.BASE.seen(Outlook.HOPEFUL));
    cases.add(Case.BASE.clean(End.LOW));
    cases.add(Case.BASE.clean(End.HIGH));
    return cases;
  }

  private static List<Function<Range, Double>> ends(boolean width) {
    return width ? List.of(Range::low, Range::high) : List.of(Range::base);
  }

  private Stream recovered(Mean mean) {
    return totals.sum(mean.streams(), totals.products(Use.BEDDING));
  }

  private SandAccount sand(Mean mean) {
    return totals.account(model.bedded(mean.of()), mean.streams());
  }

  private static Figure figure(
      String what, Kind<?> kind, Mean base, List<Mean> others, ToDoubleFunction<Mean> value) {
    return new Figure(what, kind, Range.over(base, others, value));
  }

  private List<Figure> sandFigures(Mean base, List<Mean> others) {
    List<Figure> figures = new ArrayList<>();
    figures.add(
        figure("bedded", Kind.MASS_PER_DAY, base, others, m -> sand(m).bedded().sandKgps()));
    if (spec.accounting().sandReachingPlant().low() < 1) {
      figures.add(
          figure(
              "stays in stalls and alleys, hauled with the bedding",
              Kind.MASS_PER_DAY,
              base,
              others,
              m -> sand(m).beforeThePlantKgps()));
    }
    figures.add(
        figure(
            "flushed to the plant",
            Kind.MASS_PER_DAY,
            base,
            others,
            m -> sand(m).flushed().sandKgps()));
    figures.add(figure("recovered", Kind.MASS_PER_DAY, base, others, m -> recovered(m).sandKgps()));
    for (String where : sand(base).lost().keySet()) {
      figures.add(
          figure(
              lostTo(where),
              Kind.MASS_PER_DAY,
              base,
              others,
              m -> sand(m).lost().get(where).sandKgps()));
    }
    figures.add(
        figure(
            "still in channel, line and pits",
            Kind.MASS_PER_DAY,
            base,
            others,
            m -> Math.max(0, rounded(sand(m)))));
    figures.add(
        figure(
            "recovery of the sand flushed",
            Kind.PERCENT,
            base,
            others,
            m -> sand(m).recoveryOfFlushed()));
    figures.add(
        figure(
            "recovery of the sand bedded",
            Kind.PERCENT,
            base,
            others,
            m -> sand(m).recoveryOfBedded()));
    figures.add(
        figure(
            "sand bedded that need not be bought",
            Kind.PERCENT,
            base,
            others,
            m -> sand(m).notBought()));
    figures.add(
        figure(
            "recovery as it seems when the wet heap is weighed",
            Kind.PERCENT,
            base,
            others,
            m -> sand(m).recoveryAsWeighed()));
    figures.add(
        figure(
            "sand bought in a month, by this recovery",
            Kind.MASS,
            base,
            others,
            m -> sand(m).boughtKg(YEAR_D / 12)));
    figures.add(
        new Figure(
            "mean size", Kind.GRAIN, Range.of(meanSize(model.constituents().sandClasses()))));
    return figures;
  }

  private static String lostTo(String where) {
    return where.equals(Use.SETTLED.word())
        ? "settled in channel, line and pits, and dug out"
        : "lost with " + where;
  }

  private static Figure rest(
      String what,
      Kind<?> kind,
      PlantCirculation.State state,
      List<PlantCirculation.State> others,
      ToDoubleFunction<PlantCirculation.State> value) {
    return new Figure(what, kind, Range.over(state, others, value));
  }

  private List<Figure> restFigures(
      PlantCirculation.State state, List<PlantCirculation.State> others, SandCycle cycle) {
    List<Figure> figures = new ArrayList<>();
    figures.add(
        rest(
            "flushed to the plant",
            Kind.MASS_PER_DAY,
            state,
            others,
            s -> s.account().flushed().sandKgps()));
    figures.add(
        rest(
            "recovered",
            Kind.MASS_PER_DAY,
            state,
            others,
            s -> s.account().recovered().sandKgps()));
    for (String where : state.account().lost().keySet()) {
      figures.add(
          rest(
              lostTo(where),
              Kind.MASS_PER_DAY,
              state,
              others,
              s -> s.account().lost().get(where).sandKgps()));
    }
    figures.add(
        rest(
            "recovery of the sand flushed",
            Kind.PERCENT,
            state,
            others,
            s -> s.account().recoveryOfFlushed()));
    figures.add(
        rest(
            "recovery of the sand bedded",
            Kind.PERCENT,
            state,
            others,
            s -> s.account().recoveryOfBedded()));
    figures.add(
        rest(
            "sand bedded that need not be bought",
            Kind.PERCENT,
            state,
            others,
            s -> s.rest().notBought()));
    figures.add(
        rest(
            "sand bought in a month, fines counted",
            Kind.MASS,
            state,
            others,
            s -> grains(s.rest().bought()) * InUnit.ofDays(YEAR_D / 12)));
    figures.add(
        new Figure(
            "the same if each class were caught as of new sand, fines left out",
            Kind.MASS,
            Range.of(cycle.boughtKgps() * InUnit.ofDays(YEAR_D / 12))));
    figures.add(
        rest(
            "mean size of the bedding",
            Kind.GRAIN,
            state,
            others,
            s -> meanSize(s.rest().bedded().sandClasses())));
    figures.add(
        rest(
            "mineral fines in the bedding",
            Kind.PERCENT,
            state,
            others,
            s -> fines(s.rest().bedded())));
    return figures;
  }

  private static double fines(Stream stream) {
    double all = grains(stream);
    return all > 0 ? stream.kgps(Constituents.MINERAL_FINES) / all : 0;
  }

  /** What neither leaves nor is recovered: 0 in a steady balance but for rounding. */
  private static double rounded(SandAccount account) {
    double left = account.stillInTheLineKgps();
    return Math.abs(left) <= 1e-9 * account.flushed().sandKgps() ? 0 : left;
  }

  private static double meanSize(List<sandslurry.material.SizeClass> classes) {
    double log = 0;
    for (sandslurry.material.SizeClass size : classes) {
      log += size.massFraction() * Math.log(size.meanM());
    }
    return Math.exp(log);
  }

  private Optional<List<Figure>> bedFigures(Mean base, List<Mean> others) {
    if (!(recovered(base).sandKgps() > 0)) {
      return Optional.empty();
    }
    List<Mean> some = others.stream().filter(m -> recovered(m).sandKgps() > 0).toList();
    return Optional.of(
        List.of(
            figure(
                "water by mass",
                Kind.PERCENT,
                base,
                some,
                m -> BedQuality.of(recovered(m)).moisture()),
            figure(
                "organic matter in the dry matter",
                Kind.PERCENT,
                base,
                some,
                m -> BedQuality.of(recovered(m)).organicMatter()),
            figure(
                "mineral fines in the mineral grains",
                Kind.PERCENT,
                base,
                some,
                m -> BedQuality.of(recovered(m)).mineralFines()),
            new Figure(
                "mineral fines in the sand bought",
                Kind.PERCENT,
                Range.of(model.constituents().mineralFinesShare())),
            figure(
                "mean grain size",
                Kind.GRAIN,
                base,
                some,
                m -> BedQuality.of(recovered(m)).meanSizeM())));
  }

  private StorageAccount storage(StorageSpec storage, Mean mean) {
    Stream inflow = totals.sum(mean.streams(), storage.inlets());
    return new StorageAccount(
        storage.pond(),
        storage.months().stream()
            .map(
                month ->
                    new StorageAccount.Month(
                        month.name(),
                        month.days(),
                        inflow.volumeM3ps(),
                        month.rainM(),
                        month.evaporationM()))
            .toList(),
        storage.stormM(),
        storage.freeboardM(),
        storage.settledSandM3(),
        inflow.sandKgps(),
        model.constituents().sandDensityKgM3(),
        spec.porosity());
  }

  private List<Figure> storageFigures(StorageSpec storage, Mean base, List<Mean> others) {
    StorageAccount account = storage(storage, base);
    List<Figure> figures = new ArrayList<>();
    figures.add(new Figure("volume to the top", Kind.VOLUME, Range.of(storage.pond().volumeM3())));
    figures.add(new Figure("freeboard", Kind.VOLUME, Range.of(account.freeboardVolumeM3())));
    figures.add(new Figure("design storm", Kind.VOLUME, Range.of(account.stormVolumeM3())));
    figures.add(new Figure("sand there now", Kind.VOLUME, Range.of(account.settledSandM3())));
    figures.add(new Figure("room for liquid", Kind.VOLUME, Range.of(account.roomM3())));
    for (int i = 0; i < account.months().size(); i++) {
      int month = i;
      figures.add(
          figure(
              "net inflow, " + account.months().get(i).name() + ", at the working level",
              Kind.VOLUME,
              base,
              others,
              m -> storage(storage, m).netInflowM3(month)));
    }
    if (account.daysOfStorage().isPresent()) {
      List<Mean> filling =
          others.stream().filter(m -> storage(storage, m).daysOfStorage().isPresent()).toList();
      figures.add(
          figure(
              "days of storage from the worst month on",
              Kind.DAYS,
              base,
              filling,
              m -> InUnit.ofDays(storage(storage, m).daysOfStorage().getAsDouble())));
    }
    figures.add(
        figure(
            "sand that settles in a year, in bulk",
            Kind.VOLUME,
            base,
            others,
            m -> storage(storage, m).sandPerYearM3()));
    figures.add(
        figure(
            "rise of the sand in a year",
            Kind.BORE,
            base,
            others,
            m -> storage(storage, m).sandRisePerYearM()));
    if (account.yearsToTenth().isPresent()) {
      List<Mean> sandy =
          others.stream().filter(m -> storage(storage, m).yearsToTenth().isPresent()).toList();
      figures.add(
          figure(
              "years until sand takes a tenth of the volume",
              Kind.NUMBER,
              base,
              sandy,
              m -> storage(storage, m).yearsToTenth().getAsDouble()));
    }
    if (spec.targets().storageDays().isPresent()) {
      double wanted = spec.targets().storageDays().getAsDouble();
      figures.add(
          figure(
              "room that the days wanted ask for",
              Kind.VOLUME,
              base,
              others,
              m -> storage(storage, m).roomNeededM3(wanted)));
      if (account.yearsUntilShortOf(wanted).isPresent()) {
        List<Mean> sandy =
            others.stream()
                .filter(m -> storage(storage, m).yearsUntilShortOf(wanted).isPresent())
                .toList();
        figures.add(
            figure(
                "years until sand leaves less than the days wanted below storm and freeboard",
                Kind.NUMBER,
                base,
                sandy,
                m -> storage(storage, m).yearsUntilShortOf(wanted).getAsDouble()));
      }
    }
    return figures;
  }

  private double settlingPerYearM3(PlantCirculation.State state, StorageSpec storage) {
    double bulk = model.constituents().sandDensityKgM3() * (1 - spec.porosity());
    return state.account().lost().get(storage.name()).sandKgps() * InUnit.ofDays(YEAR_D) / bulk;
  }

  private List<Figure> waterFigures(Mean base, List<Mean> others) {
    return List.of(
        figure("fresh water in a day", Kind.VOLUME, base, others, m -> water(m).freshPerDayM3()),
        figure(
            "recycled liquor in a day",
            Kind.VOLUME,
            base,
            others,
            m -> water(m).recycledPerDayM3()),
        figure(
            "recycled of all liquid used",
            Kind.PERCENT,
            base,
            others,
            m -> water(m).recycledShare()));
  }

  private WaterAccount water(Mean mean) {
    Stream fresh =
        totals
            .sum(mean.streams(), spec.waters().stream().map(WaterSpec::stream).toList())
            .plus(
                model
                    .constituents()
                    .water(
                        spec.pens().stream()
                                .mapToDouble(
                                    pen -> mean.of().ends().water().apply(pen.pen().waterM3ps()))
                                .sum()
                            * model.constituents().waterDensityKgM3()));
    return new WaterAccount(fresh, totals.sum(mean.streams(), List.copyOf(model.recycles())));
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
