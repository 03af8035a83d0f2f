package sandslurry.assessment;

import java.util.ArrayList;
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
import sandslurry.assessment.PlantResult.ModeResult;
import sandslurry.circuit.BedQuality;
import sandslurry.circuit.EnergyUse;
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
import sandslurry.design.PlantSpec.BoxSpec;
import sandslurry.design.PlantSpec.CycloneSpec;
import sandslurry.design.PlantSpec.LaneUnitSpec;
import sandslurry.design.PlantSpec.ModeSpec;
import sandslurry.design.PlantSpec.PitSpec;
import sandslurry.design.PlantSpec.StorageSpec;
import sandslurry.design.PlantSpec.UnitSpec;
import sandslurry.design.PlantSpec.Use;
import sandslurry.design.PlantSpec.WaterSpec;
import sandslurry.numeric.UnsolvedException;
import sandslurry.separation.Outlook;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/** Puts the accounts of a plant together: sand, bedding, storage, water, energy. */
final class PlantAccounts {
  private static final double MOST_AREA = 9;

  private final PlantModel model;
  private final PlantSpec spec;
  private final PlantTotals totals;

  PlantAccounts(PlantModel model, PlantTotals totals) {
    this.model = model;
    this.spec = model.spec();
    this.totals = totals;
  }

  /** The mean over the day of all modes at their own steady states. */
  private record Mean(Case of, Map<String, Stream> streams) {}

  private Optional<Mean> mean(Case one) {
    Map<String, double[]> sums = new LinkedHashMap<>();
    for (ModeSpec mode : spec.modes()) {
      if (!(model.mode(mode, one).steadyState() instanceof SteadyBalance balance)) {
        return Optional.empty();
      }
      add(sums, balance.streams(), (mode.toS() - mode.fromS()) / InUnit.ofDays(1));
    }
    return Optional.of(new Mean(one, streams(sums)));
  }

  private Mean mean(List<ModeResult> modes) {
    Map<String, double[]> sums = new LinkedHashMap<>();
    modes.forEach(mode -> add(sums, mode.balance().orElseThrow().streams(), mode.share()));
    return new Mean(Case.BASE, streams(sums));
  }

  private static void add(Map<String, double[]> sums, Map<String, Stream> streams, double weight) {
    streams.forEach(
        (name, stream) -> {
          double[] flows = stream.toArray();
          double[] sum = sums.computeIfAbsent(name, n -> new double[flows.length]);
          for (int i = 0; i < flows.length; i++) {
            sum[i] += weight * flows[i];
          }
        });
  }

  private Map<String, Stream> streams(Map<String, double[]> sums) {
    Map<String, Stream> streams = new LinkedHashMap<>();
    sums.forEach((name, flows) -> streams.put(name, Stream.of(model.constituents(), flows)));
    return streams;
  }

  Optional<Accounts> accounts(List<ModeResult> modes) {
    Mean base = mean(modes);
    List<Mean> others = new ArrayList<>();
    for (Case one : cases()) {
      mean(one).ifPresent(others::add);
    }
    SandAccount sand = sand(base);
    List<Double> recovery = new ArrayList<>();
    for (int k = 0; k < model.constituents().sandClasses().size(); k++) {
      recovery.add(Math.min(1, sand.recoveryOfFlushed(k) * spec.rebeddedShare()));
    }
    SandCycle cycle =
        SandCycle.of(model.constituents().sandClasses(), recovery, sand.bedded().sandKgps());
    Map<String, StorageAccount> storages = new LinkedHashMap<>();
    totals.storages().forEach(storage -> storages.put(storage.name(), storage(storage, base)));
    Map<String, List<Figure>> groups = new LinkedHashMap<>();
    groups.put("Sand", sandFigures(base, others, cycle));
    bedFigures(base, others).ifPresent(figures -> groups.put("Recovered sand as bedding", figures));
    for (StorageSpec storage : totals.storages()) {
      groups.put("Storage: " + storage.name(), storageFigures(storage, base, others));
    }
    groups.put("Water", waterFigures(base, others));
    groups.put("Energy", energyFigures(modes));
    ToDoubleFunction<Mean> capture = m -> totals.capture(m.streams());
    double target = spec.targets().sandCapture();
    Optional<WaterSpec> growing =
        spec.waters().stream().filter(w -> w.mostM3ps().isPresent()).findFirst();
    OptionalDouble extra = OptionalDouble.empty();
    if (growing.isPresent()) {
      double most = growing.get().mostM3ps().getAsDouble();
      extra = remedy("fresh water", Case.BASE::withWater, target, most);
    }
    boolean settles =
        spec.units().stream().anyMatch(u -> u instanceof BoxSpec || u instanceof LaneUnitSpec);
    return Optional.of(
        new Accounts(
            sand,
            cycle,
            recovered(base).sandKgps() > 0
                ? Optional.of(BedQuality.of(recovered(base)))
                : Optional.empty(),
            Range.over(base, others, capture),
            Range.over(base, others, m -> totals.limit(m.streams()).solved()),
            groups,
            storages,
            extra,
            growing.map(WaterSpec::stream),
            settles
                ? remedy("settling area", x -> Case.BASE.withArea(1 + x), target, MOST_AREA)
                : OptionalDouble.empty(),
            timeConstant(modes)));
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
    Map<String, Stream> lost = new LinkedHashMap<>();
    for (StorageSpec storage : totals.storages()) {
      lost.put(storage.name(), totals.sum(mean.streams(), storage.inlets()));
    }
    for (Use use : List.of(Use.FIBRE, Use.WASTE)) {
      if (!totals.products(use).isEmpty()) {
        lost.put(use.word(), totals.sum(mean.streams(), totals.products(use)));
      }
    }
    return new SandAccount(
        model.bedded(mean.of()),
        totals.sum(mean.streams(), totals.feeds()),
        recovered(mean),
        spec.rebeddedShare(),
        lost);
  }

  private static Figure figure(
      String what, Kind<?> kind, Mean base, List<Mean> others, ToDoubleFunction<Mean> value) {
    return new Figure(what, kind, Range.over(base, others, value));
  }

  private List<Figure> sandFigures(Mean base, List<Mean> others, SandCycle cycle) {
    List<Figure> figures = new ArrayList<>();
    figures.add(
        figure("bedded", Kind.MASS_PER_DAY, base, others, m -> sand(m).bedded().sandKgps()));
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
              "lost with " + where,
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
            m -> sand(m).boughtKg(365.0 / 12)));
    figures.add(
        new Figure(
            "sand bought in a month when bedded again and again",
            Kind.MASS,
            Range.of(cycle.boughtKgps() * InUnit.ofDays(365.0 / 12))));
    figures.add(
        new Figure(
            "recovery of the sand that circulates",
            Kind.PERCENT,
            Range.of(cycle.recoveryOfBedded())));
    figures.add(
        new Figure(
            "mean size of the sand bought",
            Kind.GRAIN,
            Range.of(meanSize(model.constituents().sandClasses()))));
    figures.add(
        new Figure(
            "mean size of the sand that circulates",
            Kind.GRAIN,
            Range.of(meanSize(cycle.bedded()))));
    return figures;
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
              "net inflow, " + account.months().get(i).name(),
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
    return figures;
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

  private List<Figure> energyFigures(List<ModeResult> modes) {
    List<EnergyUse> uses = new ArrayList<>(spec.machines());
    for (UnitSpec unit : spec.units()) {
      if (unit instanceof CycloneSpec cyclone) {
        // The pump runs a share of each mode; its mean over the day is what counts.
        double watts = 0;
        for (ModeResult mode : modes) {
          watts += mode.share() * mode.balance().map(b -> cyclonePowerW(cyclone, b)).orElse(0.0);
        }
        uses.add(
            new EnergyUse("pump of " + cyclone.name(), Range.of(watts), cyclone.runningShare()));
      } else if (unit instanceof PitSpec pit && pit.mixer().isPresent()) {
        PlantSpec.Mixer mixer = pit.mixer().get();
        double density =
            modes.get(0).balance().map(b -> b.feed(pit.name()).densityKgM3()).orElse(1000.0);
        uses.add(
            new EnergyUse(
                "mixer of " + pit.name(),
                Range.of(mixer.impeller().powerW(mixer.speedRps(), density)),
                mixer.runningShare()));
      }
    }
    List<Figure> figures = new ArrayList<>();
    double day = InUnit.ofDays(1);
    uses.forEach(
        use ->
            figures.add(
                new Figure(
                    use.what() + ", mean of the day",
                    Kind.POWER,
                    use.perDayJ().map(joules -> joules / day))));
    figures.add(
        new Figure(
            "all of them, mean of the day",
            Kind.POWER,
            EnergyUse.totalPerDayJ(uses).map(joules -> joules / day)));
    return figures;
  }

  private double cyclonePowerW(CycloneSpec cyclone, SteadyBalance balance) {
    return model
        .liquor()
        .settling(balance.feed(cyclone.name()), cyclone.runningShare(), cyclone.shearRatePs())
        .map(
            feed ->
                cyclone.cyclone().evaluate(feed, cyclone.model()).hydraulicPowerW()
                    / cyclone.pumpEfficiency())
        .orElse(0.0);
  }

  private OptionalDouble timeConstant(List<ModeResult> modes) {
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
