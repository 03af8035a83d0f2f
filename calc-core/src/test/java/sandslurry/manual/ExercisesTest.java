package sandslurry.manual;

import static org.assertj.core.api.Assertions.assertThat;
import static sandslurry.library.Amounts.degC;
import static sandslurry.library.Amounts.degF;
import static sandslurry.library.Amounts.ft;
import static sandslurry.library.Amounts.gpm;
import static sandslurry.library.Amounts.in;
import static sandslurry.library.Amounts.kgPerM3;
import static sandslurry.library.Amounts.lps;
import static sandslurry.library.Amounts.m;
import static sandslurry.library.Amounts.mPas;
import static sandslurry.library.Amounts.mm;
import static sandslurry.library.Amounts.mps;
import static sandslurry.library.Amounts.pa;
import static sandslurry.library.Amounts.percent;
import static sandslurry.library.Amounts.rpm;
import static sandslurry.units.UnitSystem.METRIC;
import static sandslurry.units.UnitSystem.US;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import sandslurry.library.DesignDraft;
import sandslurry.library.Lane;
import sandslurry.library.Line;
import sandslurry.library.Mixture;
import sandslurry.library.Pump;
import sandslurry.pipe.fittings.FittingKind;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/**
 * Every page of the theory has five exercises with answers; those that the library computes are as
 * it does. What is worked in an answer is evaluated by {@link ByHandTest}.
 */
class ExercisesTest {
  private static final Path THEORY = Path.of("..", "docs", "theory");
  private static final Pattern ITEM = Pattern.compile("(?m)^\\d\\. ");
  private static final Mixture WASH =
      Mixture.ofWater(degF(60)).sand("ASTM C144").byVolume(percent(3));

  private static List<Path> pages() throws IOException {
    try (Stream<Path> files = Files.list(THEORY)) {
      return files
          .filter(file -> file.toString().endsWith(".md"))
          .filter(file -> !file.endsWith("README.md") && !file.endsWith("correlations.md"))
          .sorted()
          .toList();
    }
  }

  private static List<String> items(String page, String from, String to) {
    int start = page.indexOf(from);
    assertThat(start).as("a heading %s", from).isNotNegative();
    int end = to.isEmpty() ? page.length() : page.indexOf(to, start);
    String part = page.substring(start + from.length(), end);
    Matcher item = ITEM.matcher(part);
    assertThat(item.find()).isTrue();
    return List.of(part.substring(item.start()).split("(?m)^\\d\\. ")).stream()
        .filter(text -> !text.isBlank())
        .toList();
  }

  private static void answer(String page, int number, String... found) throws IOException {
    String text = Files.readString(THEORY.resolve(page + ".md"));
    String given = items(text, "### Answers", "").get(number - 1);
    assertThat(given.replaceAll("\\s+", " ")).as("%s, answer %s", page, number).contains(found);
  }

  private static Line parlor(Mixture mixture) {
    return Line.of(Line.pipe("ASTM D1785", "4 in", "Sch 40"))
        .length(ft(300))
        .rise(ft(6))
        .roughness(mm(0.1))
        .fittings(FittingKind.LONG_RADIUS_ELBOW_90, 3)
        .fittings(FittingKind.KNIFE_GATE_VALVE, 1)
        .carrying(mixture);
  }

  @Test
  void everyPageHasFiveExercisesAndTheirAnswers() throws IOException {
    assertThat(pages()).hasSize(11);
    for (Path page : pages()) {
      String text = Files.readString(page);
      assertThat(items(text, "## Exercises", "### Answers")).as("%s", page).hasSize(5);
      assertThat(items(text, "### Answers", "")).as("%s", page).hasSize(5);
    }
  }

  @Test
  void settling() throws IOException {
    answer(
        "settling-velocity",
        1,
        METRIC.show(
            Kind.FALL,
            Mixture.ofWater(degC(20))
                .sand(mm(0.3))
                .byVolume(percent(1))
                .settlingVelocity()
                .get(0)
                .value()));
    answer(
        "settling-velocity",
        3,
        METRIC.show(
            Kind.FALL,
            Mixture.ofWater(degF(35))
                .sand(mm(0.53015))
                .byVolume(percent(1))
                .settlingVelocity()
                .get(0)
                .value()));
  }

  @Test
  void deposition() throws IOException {
    for (String size : List.of("3 in", "4 in", "6 in")) {
      Line line =
          Line.of(Line.pipe("ASTM D1785", size, "Sch 40"))
              .length(ft(300))
              .carrying(Mixture.ofWater(degF(50)).sand("ASTM C144").byVolume(percent(3)));
      answer(
          "deposition-velocity",
          1,
          US.showAtLeast(Kind.FLOW, Measure.FLOW.si(line.flowRate(line.requiredVelocity()))));
    }
    Line sandier = parlor(Mixture.ofWater(degF(60)).sand("ASTM C144").byVolume(percent(6)));
    answer("deposition-velocity", 2, METRIC.show(Kind.VELOCITY, sandier.requiredVelocity()));
  }

  @Test
  void headLoss() throws IOException {
    answer("head-loss", 2, METRIC.show(Kind.HEAD, parlor(WASH).headLoss(mps(2.7263)).total()));
    for (double velocity : new double[] {0.7, 1.1, 1.6}) {
      answer(
          "head-loss",
          4,
          METRIC.show(Kind.NUMBER, parlor(WASH).headLoss(mps(velocity)).byModel().get(0).value()));
    }
  }

  @Test
  void thickCarrier() throws IOException {
    for (double yield : new double[] {5, 40, 120}) {
      Mixture thick =
          Mixture.ofBingham(degC(15), kgPerM3(1020), pa(yield), mPas(200))
              .sand(mm(0.3))
              .byVolume(percent(8));
      answer(
          "non-newtonian-carrier",
          5,
          METRIC.show(Kind.STRESS, pa(yield))
              + ": "
              + DesignDraft.titled("Thick manure")
                  .line(
                      Line.of(Line.pipe("ASTM D1785", "6 in", "Sch 40"))
                          .length(m(60))
                          .carrying(thick))
                  .flowRates(lps(15), lps(15), lps(15))
                  .assess()
                  .verdict());
    }
  }

  @Test
  void pump() throws IOException {
    Pump pump = Pump.of(rpm(1750), in(12)).speed(rpm(1200));
    double[][] curve = {{0, 95, 0}, {150, 93, 32}, {300, 87, 48}, {450, 76, 52}, {600, 60, 47}};
    for (double[] point : curve) {
      pump = pump.point(gpm(point[0]), ft(point[1]), percent(point[2]));
    }
    answer(
        "pumps",
        5,
        US.show(Kind.FLOW, pump.dutyPoints(parlor(WASH)).stable().orElseThrow().flow()));
  }

  @Test
  void lane() throws IOException {
    Lane.Settled settled =
        Lane.of(m(10), m(3), percent(0.2))
            .waterDepth(mm(300))
            .sandStorageDepth(mm(200))
            .settle(lps(60), Mixture.ofWater(degC(10)).sand("ASTM C144").byVolume(percent(1)));
    answer("settling-lane", 5, METRIC.show(Kind.PERCENT, settled.averageCapture()));
  }
}
