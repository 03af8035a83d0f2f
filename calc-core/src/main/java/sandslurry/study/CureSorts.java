package sandslurry.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sandslurry.assessment.Assessment;
import sandslurry.design.Design;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.line.FlowSpec;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.design.material.CarrierSpec.ManureSpec;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.material.sand.Gradation;
import sandslurry.pipe.catalogue.PipeCatalogue;
import sandslurry.pipe.catalogue.StandardPipe;
import sandslurry.study.TriedCure.Edit;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The sorts of changes that may mend a line, each from the least change on. */
record CureSorts(DesignDocument document, Design design, Assessment before, Finding finding) {
  private static final double[] MORE = {1, 1.05, 1.1, 1.15};
  private static final double MOST_MORE = 2;
  private static final double[] LESS = {0.95, 0.9, 0.85, 0.8, 0.75, 0.7, 0.6, 0.5};
  private static final double[] SPEEDS = {
    0.95, 1.05, 0.9, 1.1, 0.85, 1.15, 0.8, 1.2, 1.3, 0.7, 1.4, 1.5
  };
  private static final double[] SPEEDS_WITH_PIPE = {1.2, 1.35, 1.5, 1.1, 0.9, 0.8};
  private static final int PIPES_WITH_SPEED = 2;
  private static final double[] BORES = {
    0.95, 1.05, 0.9, 1.1, 0.85, 1.15, 0.8, 1.2, 0.75, 0.7, 1.35, 0.65, 1.5, 0.6, 0.5
  };
  private static final double[] CARRYING = {1, 0.93, 0.86, 0.8};
  private static final double[] LESS_SAND = {0.8, 0.65, 0.5, 0.4, 0.3, 0.2, 0.1};
  private static final double[] SCREENS_MM = {6, 4.75, 3.35, 2.36, 2, 1.7, 1.18, 0.85, 0.6};
  private static final double[] TEMPERATURE_STEPS_K = {10, 7, 5, 3, 2, 1};
  private static final double COLDEST_K = 274;
  private static final double WARMEST_K = 313;
  private static final double THINNER_BY = 0.005;

  /**
   * One sort.
   *
   * @param name what it is called
   * @param tries how many changes of a line of one run are tried at most
   * @param changes the changes, the least first; none when the sort does not apply
   */
  record Sort(String name, int tries, Stream<TriedCure> changes) {}

  List<Sort> all() {
    return List.of(
        new Sort("higher flow rates", 4, moreFlow()),
        new Sort("lower flow rates", 8, lessFlow()),
        new Sort("other pump speeds", 10, pumpSpeeds()),
        new Sort("standard pipes of this system", 10, near(true).map(this::inPipe)),
        new Sort("standard pipes of other systems", 8, near(false).map(this::inPipe)),
        new Sort("other bores", 16, bores()),
        new Sort("another pipe with another pump speed", 12, pipesAndSpeeds()),
        new Sort("thinner liquor", 12, thinner()),
        new Sort("less sand in the mixture", 7, lessSand()),
        new Sort("screens", 9, screens()),
        new Sort("other temperatures", 6, temperatures()));
  }

  private static TriedCure change(String text, List<Edit> edits) {
    return new TriedCure(text, edits, Severity.FAIL);
  }

  private FlowSpec flow() {
    return design.oneLine().flow();
  }

  private List<RunSpec> runs() {
    return design.oneLine().route().runs();
  }

  /** From the lowest that carries the sand; to twice the present flow rate, beyond is no cure. */
  private Stream<TriedCure> moreFlow() {
    double minimum = flow().minimumM3ps();
    OptionalDouble least = before.line().orElseThrow().window().carriesFromM3ps();
    if (least.isEmpty() || !(least.getAsDouble() > minimum)) {
      return Stream.empty();
    }
    return DoubleStream.of(MORE)
        .map(share -> share * least.getAsDouble())
        .filter(wanted -> wanted <= MOST_MORE * minimum)
        .mapToObj(
            wanted -> {
              String typed = design.units().showAtLeast(Kind.FLOW, wanted);
              List<Edit> edits = new ArrayList<>();
              edits.add(new Edit("/lines/0/flow/minimum", typed));
              if (wanted > flow().designM3ps()) {
                edits.add(new Edit("/lines/0/flow/design", typed));
              }
              if (wanted > flow().maximumM3ps()) {
                edits.add(new Edit("/lines/0/flow/maximum", typed));
              }
              return change("raise the minimum flow rate to " + typed, edits);
            });
  }

  private Stream<TriedCure> lessFlow() {
    double most = flow().maximumM3ps();
    return DoubleStream.of(LESS)
        .map(share -> share * most)
        .filter(wanted -> wanted >= flow().minimumM3ps())
        .mapToObj(
            wanted -> {
              String typed = design.units().showAtMost(Kind.FLOW, wanted);
              List<Edit> edits = new ArrayList<>();
              edits.add(new Edit("/lines/0/flow/maximum", typed));
              if (wanted < flow().designM3ps()) {
                edits.add(new Edit("/lines/0/flow/design", typed));
              }
              return change("keep the flow rate at or below " + typed, edits);
            });
  }

  private Stream<TriedCure> pumpSpeeds() {
    return design.pump().flatMap(PumpSpec::rotodynamic).stream()
        .flatMap(pump -> speeds(pump, SPEEDS));
  }

  private Stream<TriedCure> speeds(RotodynamicSpec pump, double[] ratios) {
    double now = pump.first().speedPs();
    return DoubleStream.of(ratios)
        .mapToObj(
            ratio -> {
              String typed =
                  ratio > 1
                      ? design.units().showAtLeast(Kind.FREQUENCY, ratio * now)
                      : design.units().showAtMost(Kind.FREQUENCY, ratio * now);
              return change(
                  "run the pump at " + typed + " (check its greatest speed with the maker)",
                  List.of(new Edit("/lines/0/pump/speed", typed)));
            });
  }

  /** The runs that the finding names, and all when it names none. */
  private List<Integer> concerned() {
    List<Integer> named = indexes(run -> finding.element().equals(run.name()));
    if (named.isEmpty()) {
      named = indexes(run -> finding.element().contains(run.name()));
    }
    return named.isEmpty() ? indexes(run -> true) : named;
  }

  private List<Integer> indexes(Predicate<RunSpec> wanted) {
    return IntStream.range(0, runs().size())
        .filter(i -> wanted.test(runs().get(i)))
        .boxed()
        .toList();
  }

  /** Names the runs where only some of several are changed. */
  private String ofRuns(List<Integer> changed) {
    return changed.size() == runs().size()
        ? ""
        : changed.stream()
            .map(i -> '"' + runs().get(i).name() + '"')
            .collect(Collectors.joining(" and ", " in the run ", ""));
  }

  /** Standard pipes of the system that the line is of, or of all others: likeliest bore first. */
  private Stream<StandardPipe> near(boolean ofThisSystem) {
    RunSpec first = runs().get(concerned().get(0));
    double bore = narrower() * first.meanBoreM();
    List<StandardPipe> near = new ArrayList<>();
    PipeCatalogue.all().stream()
        .filter(pipe -> first.pipe().map(p -> !p.equals(pipe)).orElse(true))
        .filter(
            pipe ->
                first.pipe().map(p -> p.system() == pipe.system()).orElse(false) == ofThisSystem)
        .sorted(Comparator.comparingDouble(pipe -> Math.abs(Math.log(pipe.meanBoreM() / bore))))
        .filter(pipe -> near.stream().allMatch(other -> ofThisSystem || differ(pipe, other)))
        .forEach(near::add);
    return near.stream();
  }

  /** Of other systems one pipe of about a bore is enough to try. */
  private static boolean differ(StandardPipe one, StandardPipe other) {
    return Math.abs(Math.log(one.meanBoreM() / other.meanBoreM())) > 0.04;
  }

  private TriedCure inPipe(StandardPipe pipe) {
    List<Integer> changed = concerned();
    List<Edit> edits = new ArrayList<>();
    for (int i : changed) {
      String at = "/lines/0/route/runs/" + i + "/";
      edits.add(new Edit(at + "bore", ""));
      edits.add(new Edit(at + "rating", ""));
      edits.add(new Edit(at + "pipe/system", pipe.system().standard()));
      edits.add(new Edit(at + "pipe/size", pipe.size()));
      edits.add(new Edit(at + "pipe/class", pipe.wallClass()));
    }
    String now =
        runs().get(changed.get(0)).pipe().map(StandardPipe::words).orElse("the bore given");
    return change("use " + pipe.words() + " in place of " + now + ofRuns(changed), edits);
  }

  /** A narrower pipe against settling, else a wider one, and the speed that it asks of the pump. */
  private Stream<TriedCure> pipesAndSpeeds() {
    Optional<RotodynamicSpec> rotodynamic = design.pump().flatMap(PumpSpec::rotodynamic);
    if (rotodynamic.isEmpty()) {
      return Stream.empty();
    }
    RotodynamicSpec pump = rotodynamic.get();
    double now = runs().get(concerned().get(0)).meanBoreM();
    boolean narrower = finding.topic() == Topic.PLUGGING;
    return near(true)
        .filter(pipe -> pipe.meanBoreM() < now == narrower)
        .limit(PIPES_WITH_SPEED)
        .flatMap(
            pipe ->
                speeds(pump, SPEEDS_WITH_PIPE)
                    .map(
                        speed -> {
                          TriedCure laid = inPipe(pipe);
                          List<Edit> edits = new ArrayList<>(laid.edits());
                          edits.addAll(speed.edits());
                          return change(laid.text() + ", and " + speed.text(), edits);
                        }));
  }

  /** Runs that were given by their bore. */
  private Stream<TriedCure> bores() {
    List<Integer> changed =
        concerned().stream().filter(i -> runs().get(i).pipe().isEmpty()).toList();
    if (changed.isEmpty()) {
      return Stream.empty();
    }
    double now = runs().get(changed.get(0)).meanBoreM();
    double narrower = narrower();
    DoubleStream carrying =
        narrower < 1
            ? DoubleStream.of(CARRYING).map(ratio -> ratio * narrower)
            : DoubleStream.empty();
    return DoubleStream.concat(carrying, DoubleStream.of(BORES))
        .mapToObj(
            ratio -> {
              String typed =
                  ratio < 1
                      ? design.units().showAtMost(Kind.BORE, ratio * now)
                      : design.units().showAtLeast(Kind.BORE, ratio * now);
              return change(
                  "take a bore of " + typed + ofRuns(changed),
                  changed.stream()
                      .map(i -> new Edit("/lines/0/route/runs/" + i + "/bore", typed))
                      .toList());
            });
  }

  /**
   * The bore, over that of now, in which the minimum flow rate is as fast as the lowest that
   * carries the sand is now: 1 where it is fast enough.
   */
  private double narrower() {
    OptionalDouble least = before.line().orElseThrow().window().carriesFromM3ps();
    return least.isPresent() && least.getAsDouble() > flow().minimumM3ps()
        ? Math.sqrt(flow().minimumM3ps() / least.getAsDouble())
        : 1;
  }

  private Stream<TriedCure> thinner() {
    Optional<ManureSpec> manure = design.carrier().manure();
    if (manure.isEmpty()) {
      return Stream.empty();
    }
    double solids = manure.get().totalSolids();
    return IntStream.rangeClosed(1, (int) Math.ceil(solids / THINNER_BY) - 1)
        .mapToObj(
            i -> {
              String typed = design.units().showAtMost(Kind.PERCENT, solids - i * THINNER_BY);
              return change(
                  "dilute the liquor to " + typed + " sand-free solids or less",
                  List.of(
                      new Edit("/carrier/laboratory", ""),
                      new Edit("/carrier/totalSolids", typed)));
            });
  }

  /** Where the sand is given as a share, with its highest share in proportion. */
  private Stream<TriedCure> lessSand() {
    String field =
        document.has("/lines/0/mixture/volumeFraction")
            ? "/lines/0/mixture/volumeFraction"
            : "/lines/0/mixture/massFraction";
    if (finding.topic() != Topic.PLUGGING || !document.has(field)) {
      return Stream.empty();
    }
    double now = Measure.FRACTION.si(Measure.FRACTION.parse(document.text(field)));
    double most = flow().extremes().highestSand().orElse(0.0);
    return DoubleStream.of(LESS_SAND)
        .mapToObj(
            share -> {
              String typed = design.units().showAtMost(Kind.PERCENT, share * now);
              List<Edit> edits = new ArrayList<>();
              edits.add(new Edit(field, typed));
              String atMost = "";
              if (most > 0) {
                String highest = design.units().showAtMost(Kind.PERCENT, share * most);
                edits.add(new Edit("/lines/0/flow/highestSandFraction", highest));
                atMost = ", at no time more than " + highest + " by volume";
              }
              return change(
                  "bring no more than "
                      + typed
                      + " of sand by "
                      + (field.endsWith("volumeFraction") ? "volume" : "mass")
                      + atMost,
                  edits);
            });
  }

  /**
   * Screens before the line. What passes is typed as a sieve analysis, its shares rounded down; the
   * concentration is left as it was. In a plant a screen is a unit of its own.
   */
  private Stream<TriedCure> screens() {
    if (finding.topic() != Topic.PLUGGING || design.plant().isPresent()) {
      return Stream.empty();
    }
    Gradation sand = design.sand().gradation();
    return DoubleStream.of(SCREENS_MM)
        .map(mm -> Measure.LENGTH.si(Measure.LENGTH.of(mm, "mm")))
        .filter(opening -> opening > sand.d50M() && sand.fractionPassing(opening) < 0.9999)
        .mapToObj(opening -> screen(sand, opening));
  }

  private TriedCure screen(Gradation sand, double openingM) {
    String opening = design.units().showAtMost(Kind.GRAIN, openingM);
    List<Edit> edits =
        new ArrayList<>(
            List.of(
                new Edit("/sand/gradation", ""),
                new Edit("/sand/d50", ""),
                new Edit("/sand/d85", "")));
    double through = sand.fractionPassing(openingM);
    int row = 0;
    String last = opening;
    for (double sieve : sand.sievesM()) {
      String size = design.units().showAtLeast(Kind.GRAIN, sieve);
      if (sieve < openingM && !size.equals(last) && !size.equals(opening)) {
        double passing = sand.fractionPassing(sieve) / through;
        add(edits, row++, size, design.units().showAtMost(Kind.PERCENT, passing));
        last = size;
      }
    }
    add(edits, row, opening, design.units().show(Kind.PERCENT, 1));
    return change("screen the sand at " + opening + " before the line", edits);
  }

  private static void add(List<Edit> edits, int row, String size, String passing) {
    edits.add(new Edit("/sand/gradation/" + row + "/size", size));
    edits.add(new Edit("/sand/gradation/" + row + "/passing", passing));
  }

  /** A narrower range about the temperature given. */
  private Stream<TriedCure> temperatures() {
    if (finding.topic() != Topic.PLUGGING) {
      return Stream.empty();
    }
    double now = before.carrier().temperatureK();
    return DoubleStream.of(TEMPERATURE_STEPS_K)
        .mapToObj(
            step -> {
              String cold =
                  design.units().showAtLeast(Kind.TEMPERATURE, Math.max(COLDEST_K, now - step));
              String warm =
                  design.units().showAtMost(Kind.TEMPERATURE, Math.min(WARMEST_K, now + step));
              return change(
                  "keep the liquid between " + cold + " and " + warm,
                  List.of(
                      new Edit("/lines/0/flow/coldest", cold),
                      new Edit("/lines/0/flow/warmest", warm)));
            });
  }
}
