package sandslurry.assessment;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import sandslurry.assessment.plant.AlleyFlush;
import sandslurry.assessment.plant.PlantClogging;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantModel.Case;
import sandslurry.assessment.plant.PlantOutages;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantResult.Accounts;
import sandslurry.assessment.plant.PlantResult.FlowEdge;
import sandslurry.assessment.plant.PlantResult.ModeResult;
import sandslurry.assessment.plant.PlantResult.Recycling;
import sandslurry.assessment.plant.PlantResult.WaterSizing;
import sandslurry.assessment.plant.account.LineDuty;
import sandslurry.assessment.plant.account.PlantAccounts;
import sandslurry.assessment.plant.account.PlantRemedies;
import sandslurry.design.Design;
import sandslurry.design.LineSpec;
import sandslurry.design.plant.PlantSpec;
import sandslurry.design.plant.PlantSpec.ModeSpec;
import sandslurry.design.plant.PlantSpec.PenSpec;
import sandslurry.plant.Figure;
import sandslurry.plant.Stream;
import sandslurry.plant.network.Mode;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.network.SteadyState;
import sandslurry.plant.pen.PenLoad;
import sandslurry.plant.schedule.Day;
import sandslurry.plant.schedule.DayRun;
import sandslurry.plant.schedule.DaySchedule;
import sandslurry.plant.unit.PitUnit;
import sandslurry.plant.unit.PlantUnit;

/** Works a plant out: loads, steady balances, days, accounts. */
final class PlantEvaluation {
  /** Days by schedule at most, from pits full of water on. */
  static final int DAYS = 60;

  /** In so many days the pits of a plant have followed a change (own choice, no source). */
  private static final int FOLLOWED = 4;

  /** Where sand goes that settles in a pit. */
  private static final String DUG = "dug out of pits";

  /** Where goes what spills over the brim of a pit. */
  private static final String SPILLED = "spilled";

  private static final double LONGEST_STEP_S = PlantOutages.LONGEST_STEP_S;
  private static final double LEFT = 0.05;
  private static final List<Double> FACTORS = List.of(0.5, 1.0, 1.5, 2.0);

  private final PlantModel model;
  private final PlantSpec spec;
  private Optional<PlantAccounts> books = Optional.empty();

  PlantEvaluation(Design design) {
    this.model = new PlantModel(design);
    this.spec = model.spec();
  }

  PlantModel model() {
    return model;
  }

  PlantResult result() {
    List<PenLoad> loads = spec.pens().stream().map(model::load).toList();
    List<ModeResult> modes = spec.modes().stream().map(this::mode).toList();
    boolean steady = modes.stream().allMatch(mode -> mode.balance().isPresent());
    ModeResult main = PlantResult.longest(modes);
    DayRun days = days(modes);
    List<Recycling> recycling = model.recycles().isEmpty() ? List.of() : recycling(main.mode());
    if (steady) {
      books = Optional.of(new PlantAccounts(model, modes, days, one -> dayAfter(days, one)));
    }
    Optional<Accounts> accounts = books.map(b -> b.accounts(List.of()));
    return new PlantResult(
        loads,
        PenLoad.sum("all pens", loads),
        modes,
        accounts,
        days,
        settled(days),
        recycling,
        main.balance().map(this::unitFigures).orElse(Map.of()),
        accounts.isPresent()
            ? new PlantRemedies(model, books.orElseThrow()).sizing(accounts)
            : WaterSizing.NONE,
        accounts.isPresent()
            ? new PlantOutages(
                    model, days, modes.stream().anyMatch(mode -> mode.clogged().isPresent()))
                .all()
            : List.of(),
        Optional.empty(),
        Map.of());
  }

  /** The same result, the energy of the pumps of the lines counted in its accounts. */
  PlantResult withLines(PlantResult result, Design design, Assessment lines) {
    List<LineDuty> duties = new ArrayList<>();
    for (LineSpec line : design.lines()) {
      boolean alone = lines.lines().isEmpty();
      Assessment its = alone ? lines : lines.lines().get(line.name());
      duties.add(
          new LineDuty(
              alone ? "the line" : line.name(),
              line.stream(),
              alone,
              its.service().day(),
              its.pump()));
    }
    duties.removeIf(duty -> !duty.isKnown());
    return books.isEmpty() || duties.isEmpty() ? result : result.with(books.get().accounts(duties));
  }

  private ModeResult mode(ModeSpec mode) {
    Mode built = model.mode(mode, Case.BASE);
    SteadyState state = built.steadyState();
    Optional<SteadyBalance> balance = state.balance();
    balance.ifPresent(found -> model.remember(mode, found));
    return new ModeResult(
        mode,
        state,
        balance.map(this::sheet).orElse(List.of()),
        balance.map(found -> model.totals().limit(found.streams())),
        balance.flatMap(found -> new PlantClogging(model).of(built, found)));
  }

  private List<FlowEdge> sheet(SteadyBalance balance) {
    Map<String, String> from = new LinkedHashMap<>();
    spec.pens().forEach(pen -> from.put(pen.stream(), pen.pen().name()));
    spec.waters().forEach(water -> from.put(water.stream(), "fresh water"));
    Map<String, String> to = new LinkedHashMap<>();
    spec.products().forEach(product -> to.put(product.stream(), product.use().word()));
    for (PlantUnit unit : spec.units()) {
      unit.outlets().forEach(stream -> from.put(stream, unit.name()));
      unit.inlets().forEach(stream -> to.put(stream, unit.name()));
    }
    model.totals().settled().forEach(stream -> to.putIfAbsent(stream, DUG));
    model.totals().spilled().forEach(stream -> to.putIfAbsent(stream, SPILLED));
    List<FlowEdge> edges = new ArrayList<>();
    balance
        .streams()
        .forEach(
            (name, stream) -> {
              // Where nothing settles there is nothing to draw.
              boolean seldom = DUG.equals(to.get(name)) || SPILLED.equals(to.get(name));
              if (!seldom || stream.massKgps() > 0) {
                edges.add(
                    new FlowEdge(
                        name,
                        from.get(name),
                        to.get(name),
                        stream.volumeM3ps(),
                        stream.sandKgps()));
              }
            });
    return edges;
  }

  /**
   * Days by schedule, the pits filled with water at first: how the liquor of a new plant builds.
   * The pool of a storage, which takes months to build, starts as it is at rest.
   */
  private DayRun days(List<ModeResult> modes) {
    Map<String, Stream> contents = new LinkedHashMap<>();
    Optional<SteadyBalance> rest = PlantResult.longest(modes).balance();
    for (PitUnit pit : spec.pits()) {
      if (pit.isPool() && rest.isPresent()) {
        Stream held = rest.get().stream(pit.pit().overflow().orElseThrow());
        if (held.volumeM3ps() > 0) {
          contents.put(pit.name(), held);
        }
      }
    }
    return schedule(Case.BASE).run(DAYS, contents, LONGEST_STEP_S);
  }

  private DaySchedule schedule(Case one) {
    return model.day(mode -> model.scheduled(mode, one), model.batches());
  }

  /** A day in another case, some days after those that were run, when the pits have followed. */
  private Optional<Day> dayAfter(DayRun days, Case one) {
    DayRun run = schedule(one).after(days.last().orElseThrow(), FOLLOWED, LONGEST_STEP_S);
    return run.stopped().isEmpty() ? run.last() : Optional.empty();
  }

  /** Total solids of all that the pits, pools left out, hold at the end of a day. */
  private double held(Day day) {
    List<Stream> contents = new ArrayList<>();
    for (PitUnit pit : spec.pits()) {
      if (!pit.isPool()) {
        contents.add(day.pits().get(pit.name()).endContents());
      }
    }
    return Stream.mix(model.constituents(), contents).totalSolids();
  }

  private OptionalInt settled(DayRun days) {
    Optional<Day> last = days.last();
    boolean pits = spec.pits().stream().anyMatch(pit -> !pit.isPool());
    if (last.isEmpty() || !pits || days.stopped().isPresent()) {
      return OptionalInt.empty();
    }
    double limit = held(last.get());
    OptionalInt day = days.settledBy(this::held, limit, LEFT);
    // Near a last day that does not repeat itself everything is near it: that says nothing.
    return day.isPresent() && (days.days().size() < DAYS || day.getAsInt() <= DAYS * 2 / 3)
        ? day
        : OptionalInt.empty();
  }

  private List<Recycling> recycling(ModeSpec mode) {
    List<Recycling> rows = new ArrayList<>();
    for (double factor : FACTORS) {
      SteadyState state = model.mode(mode, Case.BASE.recycling(factor)).steadyState();
      Optional<SteadyBalance> balance = state.balance();
      rows.add(
          new Recycling(
              factor,
              balance
                  .map(
                      b ->
                          model
                              .totals()
                              .sum(b.streams(), List.copyOf(model.recycles()))
                              .volumeM3ps())
                  .orElse(0.0),
              balance.map(b -> model.totals().limit(b.streams()))));
    }
    return rows;
  }

  private Map<String, List<Figure>> unitFigures(SteadyBalance balance) {
    Map<String, List<Figure>> figures = new LinkedHashMap<>();
    for (PenSpec pen : spec.pens()) {
      pen.flush()
          .ifPresent(
              flush -> figures.put(flush.unit(), new AlleyFlush(model, pen).figures(balance)));
    }
    for (PlantUnit unit : spec.units()) {
      List<Figure> own = model.at(unit, balance).figures();
      if (!own.isEmpty()) {
        figures.put(unit.name(), own);
      }
    }
    return figures;
  }
}
