package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sandslurry.design.Design;
import sandslurry.design.Documents;
import sandslurry.design.RandomDesigns;
import sandslurry.fact.step.Followed;
import sandslurry.golden.Shipped;

/** Every number of the working can be followed by hand. */
class WorkingTest {
  static List<String> files() {
    return Shipped.files();
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyStepOfAnExampleGivesWhatItPrints(String file) {
    List<String> wrong = Followed.problems(Shipped.assessment(file).working());
    assertThat(wrong).isEmpty();
  }

  @Property(tries = 60, maxDiscardRatio = 50)
  void everyStepOfARandomDesignGivesWhatItPrints(@ForAll long seed) {
    Optional<Design> design = Documents.parse(RandomDesigns.inside(seed, false)).read().design();
    Assume.that(design.isPresent());
    Followed.all(Evaluation.assess(design.get()).working());
  }
}
