package sandslurry.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import sandslurry.assessment.Evaluation;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.Problem;
import sandslurry.design.document.Reading;
import sandslurry.pipe.catalogue.PipeCatalogue;
import sandslurry.pipe.catalogue.PipeSystem;
import sandslurry.pipe.catalogue.StandardPipe;

/**
 * Which standard pipe a line needs. Every pipe of the systems chosen is put into the design and the
 * whole design is evaluated, so that nothing is judged here that a report would judge otherwise.
 *
 * <p>Sized are the runs without pipe and bore, all in the same pipe; when every run has one, all
 * runs that lie in a standard pipe; when none does, all runs.
 *
 * @param fits pipes in which nothing fails: the best verdict first, of equals that which takes
 *     least power
 * @param rejected the others, in the order of the catalogue
 * @param problems why the design cannot be read with any pipe; empty otherwise
 */
public record Sizing(List<SizedPipe> fits, List<SizedPipe> rejected, List<Problem> problems) {
  /** A pipe that takes so many times the least power is too large, whatever its verdict. */
  private static final double TOO_MUCH_POWER = 4;

  private static final Problem NO_LINE =
      new Problem(
          "/lines",
          "",
          "is missing: there is no line to size; boxes, lanes and pits are sized by their name");

  /** Copies the lists. */
  public Sizing {
    fits = List.copyOf(fits);
    rejected = List.copyOf(rejected);
    problems = List.copyOf(problems);
  }

  /**
   * Sizes the line of a design at the flow rates that it names.
   *
   * @param document the design; runs to be sized need no pipe
   * @param systems the pipe systems to choose from
   * @return what fits and what does not
   */
  public static Sizing of(DesignDocument document, Set<PipeSystem> systems) {
    return of(document, systems, pipe -> Optional.of(document));
  }

  /**
   * Sizes the line of a design at flow rates of each pipe's own: from the lowest that carries the
   * sand in it at any temperature judged, rounded up, to a fifth more; the design flow rate lies a
   * tenth above the least.
   *
   * @param document the design; its flow rates are replaced
   * @param systems the pipe systems to choose from
   * @return what fits and what does not; a pipe that no flow rate keeps clear stands at the flow
   *     rates of the document
   */
  public static Sizing withFlow(DesignDocument document, Set<PipeSystem> systems) {
    return of(document, systems, pipe -> FlowOfPipe.of(document, pipe));
  }

  /**
   * The pipe that is nearest to fitting, with what would make it fit.
   *
   * @param pipe the pipe
   * @param cures what mends the line laid in it
   */
  public record Nearest(StandardPipe pipe, Cures cures) {}

  /**
   * When no pipe fits: what would give one, looked for in the pipe in which the minimum flow rate
   * is nearest to the lowest that carries the sand.
   *
   * @param document the design that was sized
   * @return the pipe and its cures; nothing when a pipe fits or none was tried
   */
  public Optional<Nearest> nearest(DesignDocument document) {
    if (!fits.isEmpty()) {
      return Optional.empty();
    }
    return rejected.stream()
        .max(Comparator.comparingDouble(Sizing::nearness))
        .map(SizedPipe::pipe)
        .flatMap(
            pipe -> {
              DesignDocument laid = laid(document, pipe);
              return laid.read()
                  .design()
                  .flatMap(design -> Cures.of(laid, Evaluation.assess(design)))
                  .map(cures -> new Nearest(pipe, cures));
            });
  }

  private static double nearness(SizedPipe pipe) {
    double minimum = pipe.assessment().design().oneLine().flow().minimumM3ps();
    return pipe.window().carriesFromM3ps().isPresent()
        ? -Math.abs(Math.log(minimum / pipe.window().carriesFromM3ps().getAsDouble()))
        : Double.NEGATIVE_INFINITY;
  }

  private interface Typed {
    Optional<DesignDocument> with(StandardPipe pipe);
  }

  private static Sizing of(DesignDocument document, Set<PipeSystem> systems, Typed typed) {
    List<SizedPipe> fits = new ArrayList<>();
    List<SizedPipe> rejected = new ArrayList<>();
    List<Problem> problems = List.of();
    if (document.size("/lines") == 0) {
      return new Sizing(fits, rejected, List.of(NO_LINE));
    }
    for (StandardPipe pipe : PipeCatalogue.all()) {
      if (systems.contains(pipe.system())) {
        Reading reading = typed.with(pipe).map(d -> laid(d, pipe).read()).orElseThrow();
        if (reading.design().isPresent()) {
          SizedPipe sized = new SizedPipe(pipe, Evaluation.assess(reading.design().get()));
          (sized.feasible() ? fits : rejected).add(sized);
        } else {
          problems = reading.problems();
        }
      }
    }
    double least = fits.stream().mapToDouble(Sizing::powerW).min().orElse(0);
    fits.sort(
        Comparator.comparing((SizedPipe fit) -> powerW(fit) > TOO_MUCH_POWER * least)
            .thenComparing(SizedPipe::verdict)
            .thenComparing(Sizing::powerW)
            .thenComparing(fit -> fit.pipe().outsideDiameterM()));
    return new Sizing(fits, rejected, fits.isEmpty() && rejected.isEmpty() ? problems : List.of());
  }

  private static double powerW(SizedPipe fit) {
    return fit.hydraulicW().orElse(0);
  }

  /** The design with a pipe in every run that is sized. */
  static DesignDocument laid(DesignDocument document, StandardPipe pipe) {
    // A reading belongs to the line as it is and says nothing of another pipe.
    DesignDocument laid = document.without("/lines/0/observed");
    for (int i : sized(document)) {
      String at = "/lines/0/route/runs/" + i + "/";
      laid =
          laid.without(at + "bore")
              .without(at + "rating")
              .with(at + "pipe/system", pipe.system().standard())
              .with(at + "pipe/size", pipe.size())
              .with(at + "pipe/class", pipe.wallClass());
    }
    return laid;
  }

  private static List<Integer> sized(DesignDocument document) {
    List<Integer> without = new ArrayList<>();
    List<Integer> inPipe = new ArrayList<>();
    int runs = document.size("/lines/0/route/runs");
    for (int i = 0; i < runs; i++) {
      boolean pipe = document.has("/lines/0/route/runs/" + i + "/pipe");
      if (pipe) {
        inPipe.add(i);
      } else if (!document.has("/lines/0/route/runs/" + i + "/bore")) {
        without.add(i);
      }
    }
    return !without.isEmpty()
        ? without
        : !inPipe.isEmpty() ? inPipe : IntStream.range(0, runs).boxed().toList();
  }
}
