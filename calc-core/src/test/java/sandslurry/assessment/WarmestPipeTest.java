package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.stop.SurgeResult;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.golden.Shipped;

/** Plastic pipe bears least when its liquid is warmest: every pressure is judged by that. */
class WarmestPipeTest {
  private static final double WARMEST_K = 273.15 + 45;

  @Test
  void surgeAndRestartAreRatedAtTheWarmest() throws Exception {
    DesignDocument parlor = DesignDocument.load(Shipped.FOLDER.resolve("parlor-line.json"));
    DesignDocument warm =
        parlor
            .with("/lines/0/flow/coldest", parlor.text("/carrier/temperature"))
            .with("/lines/0/flow/warmest", "45 degC");
    Assessment assessment = Evaluation.assess(warm.read().design().orElseThrow());
    RunSpec run = assessment.design().oneLine().route().runs().get(0);
    double rating = run.ratingPa(WARMEST_K).orElseThrow();
    assertThat(rating).isLessThan(run.ratingPa(assessment.carrier().temperatureK()).orElseThrow());
    ServiceResult service = assessment.service();
    assertThat(service.surges()).extracting(SurgeResult::ratingPa).allMatch(r -> r.isPresent());
    for (SurgeResult surge : service.surges()) {
      assertThat(surge.ratingPa().getAsDouble()).isEqualTo(rating);
    }
    assertThat(service.stop().orElseThrow().pressures().weakestPa()).hasValue(rating);
  }
}
