package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.Assessment;
import sandslurry.design.document.DesignDocument;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

class ChartsTest {
  private static DesignDocument diluted() {
    return Designs.everything()
        .with("/carrier/kind", "manure")
        .with("/carrier/totalSolids", "3 %")
        .with("/lane/depth", "30 in")
        .with("/lane/length", "300 ft")
        .with("/lines/0/dilution/mostRatio", "5");
  }

  private static List<ChartData> all(Assessment assessment) {
    Charts charts = new Charts(assessment);
    return List.of(
        charts.systemCurve().orElseThrow(),
        charts.gradeLine().orElseThrow(),
        charts.deposition(0, 0).orElseThrow(),
        charts.dilution().orElseThrow(),
        new LaneCharts(assessment).trade("Settling lane"),
        new LaneCharts(assessment).capture("Settling lane"),
        new LaneCharts(assessment).filling("Settling lane").orElseThrow());
  }

  @Test
  void everyAxisHasAUnitAndEveryValueIsFinite() {
    for (ChartData chart : all(Designs.assessment(diluted()))) {
      assertThat(chart.y()).as(chart.title()).matches(".+ \\[.+]");
      if (chart.bars().isEmpty()) {
        assertThat(chart.x()).as(chart.title()).matches(".+ \\[.+]");
      }
      assertThat(chart.series())
          .flatExtracting(ChartData.Series::points)
          .allMatch(p -> Double.isFinite(p.x() + p.y()));
      assertThat(chart.bars()).allMatch(b -> Double.isFinite(b.value()) && b.value() >= 0);
      assertThat(ChartPainter.chart(chart).getTitle().getText()).isEqualTo(chart.title());
    }
  }

  @Test
  void curvesOfOneChartDifferByMoreThanColour() {
    for (ChartData chart : all(Designs.assessment(diluted()))) {
      assertThat(
              chart.series().stream()
                  .filter(s -> s.style() != ChartData.Style.POINTS)
                  .map(ChartData.Series::style)
                  .toList())
          .as(chart.title())
          .doesNotHaveDuplicates();
    }
  }

  @Test
  void theTradeShowsSandAgainstOrganicMatterWhereTheSolidsAreKnown() {
    ChartData known = new LaneCharts(Designs.assessment(diluted())).trade("Settling lane");
    assertThat(known.right()).isEqualTo("Organic matter in the dry sand [%]");
    assertThat(known.rightSeries().get(0).points()).hasSizeGreaterThan(7);
    assertThat(known.rightSeries().get(0).points().get(0).y()).isGreaterThan(1);
    assertThat(known.series().get(0).points()).hasSizeGreaterThan(7);
    assertThat(ChartPainter.chart(known).getXYPlot().getRangeAxisCount()).isEqualTo(2);

    ChartData water =
        new LaneCharts(Designs.assessment(Designs.everything())).trade("Settling lane");
    assertThat(water.rightSeries()).isEmpty();
    assertThat(water.title()).contains("not known");
  }

  @Test
  void aLaneThatKeepsTooLittleWhenCleanIsNotFollowedAndSaysSo() {
    LaneCharts charts =
        new LaneCharts(
            Designs.assessment(diluted().without("/lane/depth").with("/lane/length", "5 m")));
    assertThat(charts.filling("Settling lane")).isEmpty();
    assertThat(charts.whyNotFilling("Settling lane")).matches("Clean, this lane keeps .+ % of .+");
  }

  @Test
  void theChartsFollowTheUnitsOfTheReport() {
    DesignDocument us = diluted().with("/units", "US");
    ChartData feet = all(Designs.assessment(us)).get(1);
    ChartData metres = all(Designs.assessment(us.with("/units", "metric"))).get(1);

    assertThat(feet.x()).endsWith("[ft]");
    assertThat(metres.x()).endsWith("[m]");
    double end = feet.series().get(0).points().get(1).x();
    assertThat(end).isCloseTo(300, org.assertj.core.data.Offset.offset(1e-9));
    assertThat(metres.series().get(0).points().get(1).x())
        .isEqualTo(Kind.LENGTH.number(UnitSystem.METRIC, 300 * 0.3048));
  }

  @Test
  void aDesignWithoutALineOrALaneHasNoChartOfIt() {
    Charts lane = new Charts(Designs.assessment(Designs.example("settling-lane.json")));
    Charts line = new Charts(Designs.assessment(Designs.example("parlor-line.json")));

    assertThat(lane.systemCurve()).isEmpty();
    assertThat(lane.gradeLine()).isEmpty();
    assertThat(lane.deposition(0, 0)).isEmpty();
    assertThat(Designs.assessment(Designs.example("parlor-line.json")).lanes()).isEmpty();
    assertThat(line.dilution()).isEmpty();
  }
}
