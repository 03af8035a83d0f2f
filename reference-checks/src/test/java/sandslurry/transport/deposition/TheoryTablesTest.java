package sandslurry.transport.deposition;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainShape;
import sandslurry.pipe.Bore;

/** The tables of the theory page are what the program computes. */
class TheoryTablesTest {
  private static final Bore PIPE = new Bore(0.15408, 4.5e-5);

  private static Slurry quartz(double sizeM, double fraction) {
    return new Slurry(
        new Liquid(998.207, 1.0016e-3), 2650, GrainShape.NATURAL, sizeM, sizeM, fraction);
  }

  private static String of(DepositionVelocityModel model, Slurry slurry) {
    return number(model.velocityMps(slurry, PIPE).value());
  }

  private static String number(double velocityMps) {
    return String.format(Locale.ROOT, "%.2f", velocityMps);
  }

  /** The sewer relations above 0.2 % of sand stand at their value there, in brackets. */
  @Test
  void limitAgainstConcentration() throws IOException {
    List<DepositionVelocityModel> sewers =
        List.of(new May1996(), new Macke1982(), new AbGhani1993());
    String rows =
        Stream.of(0.001, 0.02, 0.1, 0.2, 1.0, 5.0, 10.0)
            .map(
                percent -> {
                  Slurry slurry = quartz(5e-4, percent / 100);
                  Slurry dilute = quartz(5e-4, Math.min(percent / 100, May1996.MOST_SAND));
                  DepositionJudgement judged =
                      DepositionRule.DEFAULT.judge(SandLoad.even(slurry), PIPE, 0, 0);
                  double factor =
                      WilsonConcentration2006.factor(slurry, 5e-4, percent / 100, PIPE, Trace.NONE);
                  return "| "
                      + String.join(
                          " | ",
                          (percent == Math.rint(percent) ? "" + Math.round(percent) : "" + percent)
                              + " %",
                          of(new Thomas1979(), slurry),
                          of(new OroskarTurian1980Regression(), slurry),
                          sewers.stream()
                              .map(m -> of(m, dilute))
                              .map(v -> percent / 100 > May1996.MOST_SAND ? "(" + v + ")" : v)
                              .collect(Collectors.joining(" | ")),
                          number(factor * judged.slugMps()),
                          number(judged.limitMps()),
                          number(judged.requiredMps()))
                      + " |\n";
                })
            .collect(Collectors.joining());
    PagePart.isCurrent(
        "limit and concentration",
        "| C by volume | Thomas | Oroskar–Turian | May | Macke | Ab Ghani | Vr Vmax | limit |"
            + " required (steady C) |\n|---|---|---|---|---|---|---|---|---|\n"
            + rows);
  }

  @Test
  void everyFormulaForOneSand() throws IOException {
    Slurry slurry = quartz(3e-4, 0.1);
    DepositionJudgement judged = DepositionRule.DEFAULT.judge(SandLoad.even(slurry), PIPE, 0, 0);
    PagePart.isCurrent(
        "example",
        "| formula | V, m/s |\n|---|---|\n"
            + DepositionVelocities.FAMILY.all().stream()
                .map(m -> "| " + m.name() + " | " + of(m, slurry) + " |\n")
                .collect(Collectors.joining())
            + "| **limit by the rule** | "
            + number(judged.limitMps())
            + " |\n| **required** | "
            + number(judged.requiredMps())
            + " |\n");
  }
}
