package sandslurry.design.line;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.pipe.catalogue.PipeCatalogue;
import sandslurry.pipe.catalogue.StandardPipe;
import sandslurry.pipe.fittings.FittingKind;
import sandslurry.units.Measure;

/**
 * The fields of a run of pipe, of the route as of a suction line.
 *
 * @param <S> what is made of them
 */
public abstract class RunFields<S> extends Fields<S> {
  private static final Type<Double> ROUGHNESS = Type.quantity(Measure.LENGTH, "0 mm", "5 mm");
  private static final Type<Double> LENGTH = Type.quantity(Measure.LENGTH, "0.1 m", "20 km");
  private static final Type<Double> RISE = Type.quantity(Measure.LENGTH, "-200 m", "200 m");

  private static final PipeFields PIPE = new PipeFields();
  private static final FittingFields FITTING = new FittingFields();

  final Field<Optional<String>> name =
      optional("name", Type.text(), "run 1, run 2 ...")
          .label("Name")
          .means("what the run is called");
  private final Field<Optional<StandardPipe>> pipe =
      optional("pipe", PIPE, "a bore is given").label("Pipe").means("a pipe from a standard");
  private final Field<Optional<Double>> bore =
      optional("bore", CommonLimits.BORE, "that of the standard pipe")
          .label("Bore")
          .means("inside diameter of a pipe of your own")
          .such("150 mm", "6 in");
  private final Field<Optional<Double>> rating =
      optional("rating", CommonLimits.RATING, "not judged")
          .label("Pressure rating")
          .means("pressure rating of a pipe given by its bore")
          .such("1000 kPa", "160 psi");
  private final Field<Optional<Double>> roughness =
      optional("roughness", ROUGHNESS, "default: new pipe")
          .label("Wall roughness")
          .means("roughness of the wall, at most a tenth of the bore; needed with a bore")
          .such("0.1 mm", "0.004 in");
  private final Field<Double> length =
      needed("length", LENGTH)
          .label("Length")
          .means("length along the pipe")
          .such("90 m", "300 ft");
  private final Field<Double> rise =
      standard("rise", RISE, "0 m")
          .label("Rise (fall below 0)")
          .means("height of the end above the start, negative when the pipe falls")
          .such("2 m", "6 ft");
  private final Field<List<Fitting>> fittings =
      list("fittings", FITTING)
          .label("Fittings and valves")
          .means("fittings and valves; the velocity head lost at the outlet is always counted");

  /**
   * Declares the fields and the rules between them.
   *
   * @param name name of the part in the file
   * @param title its heading
   */
  public RunFields(String name, String title) {
    super(name, title);
    exactlyOne(pipe, bore);
    neededWhen(roughness, seen -> seen.has(bore), "a run given by its bore needs a roughness");
    onlyWhen(
        rating,
        seen -> !seen.has(pipe),
        "belongs to a run given by its bore: a standard pipe has its own");
    rule(
        rise,
        List.of(length),
        values -> Math.abs(values.get(rise)) <= values.get(length),
        values -> "cannot exceed the length of the run, " + values.written(length));
    rule(
        roughness,
        List.of(bore),
        values ->
            values.get(bore).isEmpty()
                || values.get(roughness).isEmpty()
                || values.get(roughness).get() <= 0.1 * values.get(bore).get(),
        values -> "cannot exceed a tenth of the bore, " + values.written(bore));
  }

  /**
   * The run of pipe that is typed.
   *
   * @param values what was typed
   * @param standard name of a run that has none of its own
   * @return the run
   */
  protected final RouteSpec.RunSpec run(Values values, String standard) {
    Optional<StandardPipe> standardPipe = values.get(pipe);
    Map<FittingKind, Integer> counts = new EnumMap<>(FittingKind.class);
    values.get(fittings).forEach(f -> counts.merge(f.kind(), f.count(), Integer::sum));
    return new RouteSpec.RunSpec(
        values.get(name).filter(typed -> !typed.isBlank()).orElse(standard),
        standardPipe,
        bore(values, standardPipe.map(StandardPipe::largestBoreM)),
        bore(values, standardPipe.map(StandardPipe::meanBoreM)),
        values.get(rating),
        values
            .get(roughness)
            .orElseGet(() -> standardPipe.orElseThrow().system().material().newRoughnessM()),
        values.get(length),
        values.get(rise),
        counts);
  }

  private double bore(Values values, Optional<Double> standardM) {
    return standardM.or(() -> values.get(bore)).orElseThrow();
  }

  /** A pipe of a standard. */
  private static final class PipeFields extends Fields<StandardPipe> {
    private final Field<String> system =
        needed("system", Type.choice(PipeCatalogue.systems(), s -> s, PipeFields::words))
            .label("Standard")
            .means("the standard of the pipe");
    private final Field<String> size =
        needed("size", Type.text("the nominal size of the pipe"))
            .label("Nominal size")
            .means("nominal size of the pipe")
            .such("4 in");
    private final Field<String> wall =
        needed("class", Type.text("the schedule, SDR or DR of the pipe"))
            .label("Schedule, SDR or DR")
            .means("schedule, SDR or DR of the pipe")
            .such("Sch 40");

    PipeFields() {
      super("pipe", "pipe of a standard");
    }

    private static String words(String system) {
      return PipeCatalogue.all().stream()
          .map(StandardPipe::system)
          .filter(s -> s.standard().equals(system))
          .findFirst()
          .orElseThrow()
          .words();
    }

    @Override
    protected Optional<StandardPipe> make(Values values) {
      String standard = values.get(system);
      Optional<StandardPipe> found =
          PipeCatalogue.find(standard, values.get(size), values.get(wall));
      List<String> classes = PipeCatalogue.classes(standard, values.get(size));
      if (classes.isEmpty()) {
        values.problem(
            size,
            "is no size of "
                + standard
                + " known here; those are: "
                + String.join(", ", PipeCatalogue.sizes(standard)));
      } else if (found.isEmpty()) {
        values.problem(
            wall,
            "is no class of this size of "
                + standard
                + " known here; those are: "
                + String.join(", ", classes));
      }
      return found;
    }
  }

  /** How many of one fitting there are. */
  private record Fitting(FittingKind kind, int count) {}

  /** A fitting and how many of it there are. */
  private static final class FittingFields extends Fields<Fitting> {
    /** The loss at the outlet is the velocity head, which the line always counts. */
    private static final Type<FittingKind> KINDS =
        Type.choice(
            Arrays.stream(FittingKind.values())
                .filter(kind -> kind != FittingKind.PIPE_EXIT)
                .toList(),
            FittingKind::id,
            FittingKind::id);

    private final Field<FittingKind> kind =
        needed("kind", KINDS).label("Kind").means("kind of fitting or valve");
    private final Field<Integer> count =
        standard("count", Type.count(1000), "1")
            .label("Count")
            .means("how many of it there are")
            .such("2");

    FittingFields() {
      super("fitting", "fitting");
    }

    @Override
    protected Optional<Fitting> make(Values values) {
      return Optional.of(new Fitting(values.get(kind), values.get(count)));
    }
  }
}
