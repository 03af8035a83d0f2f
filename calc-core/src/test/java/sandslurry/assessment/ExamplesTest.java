package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.assessment.line.DilutionCurve;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.finding.Value;
import sandslurry.golden.Shipped;
import sandslurry.transport.bed.SandCarriage.Support;

/** The examples of the documentation do what their page says. */
class ExamplesTest {
  private static final Path FOLDER = Shipped.FOLDER;

  private static Assessment assess(String file) {
    return Shipped.assessment(file);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          parlor-line.json              | PASS    | PLUGGING | Buried line     | Sand stays in motion at every flow rate judged
          oversized-line-plugs.json     | FAIL    | PUMP     | operating window | No flow rate works
          correlations-disagree.json    | CAUTION | PLUGGING | Return line     | by less than the margin
          settling-lane.json            | CAUTION | LANE     | settling lane   | less sand than wanted before it is cleaned
          thick-manure-piston.json      | FAIL    | PUMP     | operating window | No flow rate works
          carried-by-yield-stress.json  | PASS    | PLUGGING | Under the wall  | Carried by the yield stress
          laminar-and-depositing.json   | FAIL    | PLUGGING | operating window | No flow rate works
          valley-of-dilution.json       | PASS    | PLUGGING | Line to the separator | Carried by the yield stress
          viscometer-readings.json      | CAUTION | DATA     | carrier         | there it is an extrapolation
          closed-loop-dairy.json        | CAUTION | PLANT    | organic matter of recovered sand | may hold more organic matter than wanted
          flushed-barn-lagoon.json      | CAUTION | PLANT    | sand recovery   | may recover less
          pen-to-storage.json           | CAUTION | STOP     | flush           | not the bed that a stop without a flush leaves
          rising-route-mixed-units.json | PASS    | PLUGGING | Suction pit to wall | Sand stays in motion at every flow rate judged
          two-pumps-six-states.json     | CAUTION | STATES   | without pump 1  | velocity short of its margin
          line-slows-down.json          | CAUTION | OBSERVED | line            | more pressure than it does clean
          thick-liquor-rotodynamic.json | FAIL    | PUMP     | operating window | No flow rate works
          retrofit-undersized-line.json | CAUTION | PUMP     | pump            | another flow rate than the design flow rate
          winter-line.json              | CAUTION | STATES   | thickest liquor, most sand, most derated | turbulence does not carry the sand
          long-flat-run-power-cut.json  | CAUTION | PUMP     | pump            | more than one stable duty point
          piston-pump-cylinders.json    | PASS    | PLUGGING | Under the alley | Carried by the yield stress
          hostile-gradation.json        | CAUTION | PLUGGING | Line to the lane | can lock across it
          auger-and-gravity-return.json | FAIL    | FEED     | gravity pipe    | coarsest grains stay on the floor
          full-lane.json                | FAIL    | PLANT    | sand recovery   | less of the flushed sand than wanted
          """)
  void anExampleComesOutAsItsPageSays(
      String file, Severity verdict, Topic topic, String element, String what) throws Exception {
    Assessment assessment = assess(file);
    assertThat(assessment.verdict()).isEqualTo(verdict);
    Finding first = assessment.findings().get(0);
    assertThat(first.severity()).isEqualTo(verdict);
    assertThat(first.topic()).isEqualTo(topic);
    assertThat(first.element()).isEqualTo(element);
    assertThat(first.what()).contains(what);
    assertThat(Files.readString(FOLDER.resolve("README.md")))
        .containsPattern("\\| \\[" + file + "\\]\\(" + file + "\\) \\| " + verdict + " \\|");
  }

  @Test
  void everyExampleIsListedReadAndReportedWithoutAStrangeNumber() throws Exception {
    String page = Files.readString(FOLDER.resolve("README.md"));
    assertThat(Shipped.files()).hasSizeGreaterThanOrEqualTo(6);
    for (String name : Shipped.files()) {
      assertThat(page).contains("[" + name + "](" + name + ")");
      String report = Shipped.report(name);
      assertThat(report)
          .as(name)
          .doesNotContain("NaN", "Infinity")
          .doesNotContainPattern("[0-9]e-1[5-9]")
          .doesNotContainPattern("\\s-0(\\.0*)?\\s");
    }
  }

  @Test
  void theValleyIsSeenThickEnoughHoldsThenItFailsAndThinAndFastEnoughPassesAgain()
      throws Exception {
    List<DilutionCurve.Point> points =
        assess("valley-of-dilution.json").dilution().orElseThrow().points();
    DilutionCurve.Point thick = points.get(0);
    DilutionCurve.Point thin = points.get(points.size() - 1);
    assertThat(thick.severity()).isEqualTo(Severity.PASS);
    assertThat(thick.support()).contains(Support.CARRIED_BY_YIELD_STRESS);
    assertThat(thin.severity()).isEqualTo(Severity.PASS);
    assertThat(thin.support()).contains(Support.CARRIED_BY_TURBULENCE);
    assertThat(points).anyMatch(p -> p.severity() == Severity.FAIL);
    // One valley: what has once left the first pass does not pass again before turbulence does it.
    assertThat(points)
        .filteredOn(p -> p.support().orElseThrow() == Support.LAMINAR_AND_DEPOSITING)
        .noneMatch(p -> p.severity() == Severity.PASS);
  }

  @Test
  void enoughThinLiquorMendsTheLineThatLaysItsSand() throws Exception {
    DilutionCurve curve = assess("laminar-and-depositing.json").dilution().orElseThrow();
    assertThat(curve.points().get(0).severity()).isEqualTo(Severity.FAIL);
    assertThat(curve.firstPass().orElseThrow().support()).contains(Support.CARRIED_BY_TURBULENCE);
  }

  @Test
  void aCleanExampleHasNothingAboveANoteToSay() throws Exception {
    assertThat(assess("parlor-line.json").findings())
        .noneMatch(finding -> finding.severity().compareTo(Severity.PASS) > 0);
  }

  @Test
  void theOversizedLineDiffersFromTheOneThatPassesInPipeAndPumpOnly() throws Exception {
    DesignDocument passes = DesignDocument.load(FOLDER.resolve("parlor-line.json"));
    DesignDocument plugs = DesignDocument.load(FOLDER.resolve("oversized-line-plugs.json"));
    for (String part : List.of("/sand", "/carrier", "/lines/0/mixture", "/lines/0/flow")) {
      assertThat(plugs.json(part)).isEqualTo(passes.json(part));
    }
    assertThat(assess("oversized-line-plugs.json").findings())
        .filteredOn(finding -> finding.cures().contains("fit-smaller"))
        .extracting(finding -> finding.values().get("smaller"))
        .anyMatch(pipe -> pipe instanceof Value.Name name && name.text().startsWith("4 in Sch 40"));
  }
}
