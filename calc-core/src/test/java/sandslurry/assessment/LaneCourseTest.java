package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.lane.LaneCourse;
import sandslurry.design.document.DesignDocument;
import sandslurry.golden.Shipped;
import sandslurry.separation.lane.KeptClass;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.separation.lane.LaneTrade;

class LaneCourseTest {
  private static DesignDocument example() throws Exception {
    return DesignDocument.load(Path.of("..", "docs", "examples", "settling-lane.json"));
  }

  private static Assessment assess(DesignDocument document) {
    return Shipped.assessment(document);
  }

  private static LaneCourse course(DesignDocument document) {
    return assess(document).lanes().get("Settling lane");
  }

  private static DesignDocument withManure(String solids) throws Exception {
    return example()
        .withPart("/carrier", "{\"kind\": \"manure\", \"temperature\": \"12 degC\"}")
        .with("/carrier/totalSolids", solids);
  }

  @Test
  void aFasterLaneKeepsLessSandAndLessOrganicMatter() throws Exception {
    List<LaneTrade> trade = course(withManure("2 %")).trade();
    for (int i = 1; i < trade.size(); i++) {
      assertThat(trade.get(i).velocityMps()).isGreaterThan(trade.get(i - 1).velocityMps());
      assertThat(trade.get(i).sandRecovery()).isLessThanOrEqualTo(trade.get(i - 1).sandRecovery());
      assertThat(trade.get(i).fibreRetained())
          .isLessThanOrEqualTo(trade.get(i - 1).fibreRetained());
    }
    assertThat(trade.get(0).foreignMatter())
        .isGreaterThan(trade.get(trade.size() - 1).foreignMatter());
    assertThat(trade.get(trade.size() - 1).sandRecovery()).isLessThan(trade.get(0).sandRecovery());
  }

  @Test
  void theLanesOwnPointHasItsOwnVelocityAndLiesOnTheTrade() throws Exception {
    Assessment assessment = assess(withManure("2 %"));
    LaneCourse course = assessment.lanes().get("Settling lane");
    assertThat(course.own().velocityMps())
        .isCloseTo(assessment.lane().orElseThrow().flow().velocityMps(), Offset.offset(1e-9));
    LaneTrade slower = course.trade().get(0);
    LaneTrade faster = course.trade().get(course.trade().size() - 1);
    assertThat(course.own().sandRecovery()).isBetween(faster.sandRecovery(), slower.sandRecovery());
  }

  @Test
  void organicMatterIsKnownOnlyWhereTheSolidsOfTheCarrierAre() throws Exception {
    assertThat(course(example()).organicMatterKnown()).isFalse();
    assertThat(course(example()).own().foreignMatter()).isZero();
    assertThat(course(withManure("2 %")).organicMatterKnown()).isTrue();
    // Twice the fibre, but in a liquor so much thicker that less of it has the time to settle.
    LaneTrade thin = course(withManure("2 %")).own();
    LaneTrade thick = course(withManure("4 %")).own();
    assertThat(thick.fibreRetained()).isPositive().isLessThan(thin.fibreRetained() / 2);
  }

  @Test
  void asTheLaneFillsItKeepsLessAndTheDepositEndsAtTheStorageDepth() throws Exception {
    LaneFilling filling = course(withManure("2 %")).filling();
    List<LaneFilling.Point> points = filling.points();
    assertThat(points.get(0).depositsM().get(0)).isZero();
    LaneFilling.Point last = points.get(points.size() - 1);
    assertThat(last.timeS()).isGreaterThan(0);
    assertThat(last.recovery()).isLessThanOrEqualTo(points.get(0).recovery());
    if (filling.end() == LaneFilling.End.FULL) {
      // 12 in of storage, as the example has it.
      assertThat(last.depositsM().get(0)).isCloseTo(0.3048, Offset.offset(1e-9));
    }
  }

  @Test
  void theOutlooksBoundEachOtherInEveryClass() throws Exception {
    for (KeptClass one : course(example()).classes()) {
      assertThat(one.cautious()).isLessThanOrEqualTo(one.likely());
      assertThat(one.likely()).isLessThanOrEqualTo(one.hopeful());
    }
  }

  @Test
  void aLaneOfAPlantHasACourseUnderItsName() throws Exception {
    DesignDocument plant =
        DesignDocument.load(Path.of("..", "docs", "examples", "closed-loop-dairy.json"))
            .withPart(
                "/plant/units/3",
                """
                {"kind": "lane", "name": "Polishing lane", "in": "cyclone overflow",
                 "sand": "fine sand", "overflow": "clear",
                 "reaches": [{"length": "30 m", "width": "2 m", "slope": "0.2 %",
                              "sandStorageDepth": "300 mm"}]}
                """);
    Map<String, LaneCourse> lanes = assess(plant).lanes();
    assertThat(lanes).containsOnlyKeys("Polishing lane (plant)");
    assertThat(lanes.values().iterator().next().organicMatterKnown()).isTrue();
  }
}
