package sandslurry.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sandslurry.design.criteria.Criteria;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.Problem;
import sandslurry.design.document.Reading;
import sandslurry.design.lane.LaneSpec;
import sandslurry.design.line.FlowSpec;
import sandslurry.design.line.RouteSpec;
import sandslurry.design.station.PumpSpec;
import sandslurry.material.sand.GrainShape;
import sandslurry.pipe.fittings.FittingKind;
import sandslurry.transport.deposition.DepositionVelocities.Role;
import sandslurry.units.UnitSystem;

class DesignReadingTest {
  private static List<Problem> problems(DesignDocument document) {
    Reading reading = document.read();
    assertThat(reading.design().isPresent()).isEqualTo(reading.problems().isEmpty());
    return reading.problems();
  }

  private static void onlyProblem(
      DesignDocument document, String field, String value, String message) {
    assertThat(problems(document))
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.field()).isEqualTo(field);
              assertThat(problem.value()).isEqualTo(value);
              assertThat(problem.message()).contains(message);
            });
  }

  /** The document with one value replaced by JSON that may be of any type. */
  private static DesignDocument raw(DesignDocument document, String pointer, String json) {
    String mark = "the place of the value";
    return Documents.parse(
        document.with(pointer, mark).toString().replace("\"" + mark + "\"", json));
  }

  @Test
  void theDocumentsThatTestsStartFromHaveNoProblem() {
    assertThat(problems(Documents.line())).isEmpty();
    assertThat(problems(Documents.lane())).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /sand/density              | 0 kg/m3    | must be 1500 kg/m3 to 5000 kg/m3
          /sand/density              | 2650       | has no unit: write a density such as
          /sand/shape/corey          | 0          | must be 0.2 to 1
          /sand/shape/roundness      | 7          | must be 0 to 6
          /sand/shape/sphericity     | 1.01       | must be 0.3 to 1
          /carrier/temperature       | 32 degF    | must be 32.18 degF to 113 degF
          /carrier/temperature       | 60 ft      | is a unit of length, but a temperature is needed here
          /lines/0/mixture/volumeFraction    | 63 %       | must be 0 % to 40 %
          /lines/0/mixture/volumeFraction    | -3 %       | must be 0 % to 40 %
          /lines/0/mixture/volumeFraction    | NaN        | does not start with a number
          /lines/0/flow/design               | 0 gpm      | must be 0.7926 gal/min to 31700 gal/min
          /lines/0/flow/design               | -460 gpm   | must be 0.7926 gal/min to 31700 gal/min
          /lines/0/flow/design               | 460 ft     | is a unit of length, but a flow rate is needed here
          /lines/0/flow/design               | 4,60 gpm   | is not one number
          /lines/0/flow/design               | Infinity   | does not start with a number
          /lines/0/flow/design               | 1e999 gpm  | is too large to be a number
          /lines/0/flow/design               | 460        | has no unit
          /lines/0/flow/minimum              | 470 gpm    | must not be above the design flow of 460 gal/min
          /lines/0/flow/maximum              | 450 gpm    | must not be below the design flow of 460 gal/min
          /lines/0/route/sourceLevel         | 1 km       | must be -0.03 km to 0.1 km
          /lines/0/route/outletHead          | -1 m       | must be 0 m to 50 m
          /lines/0/route/runs/0/length       | 0 ft       | must be 0.3281 ft to 65610 ft
          /lines/0/route/runs/0/length       | 300 psi    | is a unit of pressure, but a length is needed here
          /lines/0/route/runs/0/length       | 3e9 m      | must be 0.1 m to 20000 m
          /lines/0/route/runs/0/rise         | 301 ft     | cannot exceed the length of the run, 300 ft
          /lines/0/route/runs/0/rise         | -301 ft    | cannot exceed the length of the run, 300 ft
          /lines/0/route/runs/0/roughness    | -0.1 mm    | must be 0 mm to 5 mm
          /lines/0/route/runs/0/pipe/system  | ASTM X1    | must be one of: ASME B36.10M
          /lines/0/route/runs/0/pipe/size    | 4.5 in     | is no size of ASTM D1785 known here; those are: 3 in
          /lines/0/route/runs/0/pipe/class   | SDR 26     | is no class of this size of ASTM D1785 known here; those are: Sch 40
          /lines/0/route/runs/0/fittings/0/kind  | tap    | must be one of: standard elbow 90
          /lines/0/route/runs/0/fittings/0/kind  | pipe exit | must be one of: standard elbow 90
          /lines/0/route/runs/0/fittings/0/count | 0      | must be a whole number from 1 to 1000
          /lines/0/route/runs/0/fittings/0/count | 1.5    | must be a whole number from 1 to 1000
          /lines/0/pump/kind                 | jet        | must be one of: rotodynamic, piston
          /lines/0/pump/curveSpeed           | 0 rpm      | must be 50 rpm to 6000 rpm
          /lines/0/pump/speed                | 1750 ft    | is a unit of length
          /lines/0/pump/impeller             | 12 ft      | must be 0.1641 ft to 6.561 ft
          /lines/0/pump/driveEfficiency      | 0 %        | must be 20 % to 100 %
          /lines/0/pump/driveEfficiency      | 101 %      | must be 20 % to 100 %
          /lines/0/pump/curve/1/head         | -1 ft      | must be 0 ft to 1640 ft
          /lines/0/pump/curve/1/efficiency   | 0 %        | must be above 0 % wherever the pump delivers flow
          /lines/0/pump/curve/1/efficiency   | 96 %       | must be 0 % to 95 %
          /criteria/velocityMarginShare | -1 %    | must be 0 % to 200 %
          /criteria/velocityMargin   | 1 ft       | is a unit of length, but a speed is needed here
          /criteria/wearVelocity     | 0 ft/s     | must be 1.641 ft/s to 32.8 ft/s
          /criteria/pressureShare    | 0 %        | must be 10 % to 100 %
          /criteria/sandCapture      | 101 %      | must be 0 % to 100 %
          /criteria/worstSizeGoverns | perhaps    | must be one of: yes, no
          /criteria/depositionRoles/gillies-shook-2002 | king | must be one of: governing, floor, counted
          /units                     | imperial   | must be one of: metric, US
          /formatVersion             | 3          | this program reads versions 1 and 2
          /formatVersion             | one        | must be a whole number
          """)
  void aWrongValueOfTheLineIsNamedWithFieldValueRangeAndUnit(
      String field, String value, String message) {
    DesignDocument document = Documents.line().with(field, value);
    onlyProblem(document, field, value, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /sand/d50                | 0 mm    | must be 0.001 mm to 25 mm
          /sand/d85                | 0.3 mm  | must not be below d50, which is 0.4 mm
          /carrier/totalSolids     | 14 %    | must be 0 % to 13 %
          /lane/length             | 0 m     | must be 1 m to 500 m
          /lane/width              | 60 m    | must be 0.2 m to 50 m
          /lane/slope              | 11 %    | must be 0 % to 10 %
          /lane/manning            | 15      | must be 0.008 to 0.06
          /lane/flow               | 0 L/s   | must be 0.05 L/s to 2000 L/s
          /lane/depth              | 0 m     | must be 0.005 m to 5 m
          /lane/sandVolumeFraction | 41 %    | must be 0 % to 40 %
          /lane/sandStorageDepth   | 0 m     | must be 0.005 m to 5 m
          /lane/runningTime        | 25 h    | must be 0.01667 h to 24 h
          /lane/coatingFactor      | 0       | must be 0.3 to 1
          """)
  void aWrongValueOfTheLaneIsNamedWithFieldValueRangeAndUnit(
      String field, String value, String message) {
    onlyProblem(Documents.lane().with(field, value), field, value, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /formatVersion          | is missing: this program reads versions 1 and 2
          /sand                   | is missing
          /carrier                | is missing
          /carrier/kind           | is missing: one of water, manure, measured
          /carrier/temperature    | is missing: a temperature is needed
          /lines/0/mixture                | is missing
          /lines/0/mixture/volumeFraction | is missing: give exactly one of "volumeFraction"
          /lines/0/flow                   | is missing
          /lines/0/flow/design            | is missing: a flow rate is needed
          /lines/0/route/runs             | a route needs one pipe run or more
          /lines/0/route/runs/0           | a route needs one pipe run or more
          /lines/0/route/runs/0/length    | is missing: a length is needed
          /lines/0/route/runs/0/pipe      | is missing: give exactly one of "pipe", "bore"
          /lines/0/route/runs/0/pipe/system | is missing: one of ASME B36.10M
          /lines/0/route/runs/0/pipe/size   | is missing: the nominal size of the pipe
          /lines/0/route/runs/0/pipe/class  | is missing: the schedule, SDR or DR
          /lines/0/route/runs/0/fittings/0/kind | is missing: one of
          /lines/0/pump/kind              | is missing: one of rotodynamic, piston
          /lines/0/pump/curveSpeed        | is missing
          /lines/0/pump/curve             | needs three points or more but has 0
          /lines/0/pump/curve/1/head      | is missing: a length is needed
          """)
  void whatIsMissingIsNamed(String field, String message) {
    String where = field.equals("/lines/0/route/runs/0") ? "/lines/0/route/runs" : field;
    onlyProblem(Documents.line().without(field), where, "", message);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/lane/length",
        "/lane/width",
        "/lane/flow",
        "/lane/sandStorageDepth",
        "/sand/d85"
      })
  void whatALaneLacksIsNamed(String field) {
    onlyProblem(Documents.lane().without(field), field, "", "is missing");
  }

  @Test
  void aLaneWithoutSlopeNeedsADepth() {
    DesignDocument level = Documents.lane().with("/lane/slope", "0 %");
    onlyProblem(level, "/lane/depth", "", "a lane without slope has no normal depth");
    onlyProblem(Documents.lane().without("/lane/slope"), "/lane/depth", "", "is missing");
    assertThat(problems(level.with("/lane/depth", "30 cm"))).isEmpty();
  }

  @Test
  void aLaneWithoutALineNeedsItsOwnMixture() {
    onlyProblem(
        Documents.lane().without("/lane/sandVolumeFraction"),
        "/lane/sandVolumeFraction",
        "",
        "without a line, or with several, there is no other mixture");
    assertThat(problems(Documents.lane().with("/lines/0/mixture/volumeFraction", "2 %")))
        .extracting(Problem::field)
        .containsExactly("/lines/0/flow", "/lines/0/route");
    assertThat(problems(Documents.lane().with("/lines/0/flow/design", "20 L/s")))
        .extracting(Problem::field)
        .containsExactly("/lines/0/mixture", "/lines/0/route");
  }

  @Test
  void aDesignHasAtLeastOnePart() {
    DesignDocument nothing = Documents.lane().without("/lane");
    onlyProblem(nothing, "/lines", "", "a design has a line, a lane, a plant, a screw or a");
    DesignDocument pipe =
        nothing
            .with("/gravityRun/bore", "300 mm")
            .with("/gravityRun/slope", "1 %")
            .with("/gravityRun/flow", "30 L/s");
    assertThat(problems(pipe)).isEmpty();
    assertThat(problems(pipe.with("/gravityRun/flow", "0 L/s")))
        .extracting(Problem::field)
        .containsExactly("/gravityRun/flow");
  }

  @Test
  void aGradationThatRunsBackwardsOrRepeatsASieveIsRefused() {
    DesignDocument document =
        Documents.line()
            .without("/sand/gradation")
            .insert("/sand/gradation", 0, "{\"size\": \"4.75 mm\", \"passing\": \"100 %\"}")
            .insert("/sand/gradation", 1, "{\"size\": \"0.6 mm\", \"passing\": \"40 %\"}")
            .insert("/sand/gradation", 2, "{\"size\": \"0.15 mm\", \"passing\": \"5 %\"}");
    assertThat(problems(document)).isEmpty();
    assertThat(problems(document.with("/sand/gradation/1/passing", "3 %")))
        .isNotEmpty()
        .allSatisfy(p -> assertThat(p.field()).startsWith("/sand/gradation"));
    assertThat(problems(document.with("/sand/gradation/1/size", "0.15 mm")))
        .isNotEmpty()
        .allSatisfy(p -> assertThat(p.field()).startsWith("/sand/gradation"));
    assertThat(problems(document.without("/sand/gradation/2").without("/sand/gradation/1")))
        .isNotEmpty();
    onlyProblem(
        document.with("/sand/gradation/2/passing", "120 %"),
        "/sand/gradation/2/passing",
        "120 %",
        "must be 0 % to 100 %");
    onlyProblem(
        document.without("/sand/gradation/0/size"),
        "/sand/gradation/0/size",
        "",
        "is missing: a length is needed");
    assertThat(problems(document.with("/sand/d50", "0.4 mm").with("/sand/d85", "0.9 mm")))
        .isNotEmpty();
  }

  @Test
  void sandThatIsMostlySiltIsNoSand() {
    onlyProblem(
        Documents.lane().with("/sand/d50", "0.05 mm"), "/sand/d50", "0.05 mm", "is no sand");
  }

  @Test
  void aPumpCurveRunsForward() {
    DesignDocument line = Documents.line();
    onlyProblem(
        line.with("/lines/0/pump/curve/2/flow", "150 gpm"),
        "/lines/0/pump/curve/2/flow",
        "150 gpm",
        "must be above the flow of the point before it, 150 gal/min");
    onlyProblem(
        line.with("/lines/0/pump/curve/2/flow", "100 gpm"),
        "/lines/0/pump/curve/2/flow",
        "100 gpm",
        "must be above the flow of the point before it");
    onlyProblem(
        line.without("/lines/0/pump/curve/3").without("/lines/0/pump/curve/2"),
        "/lines/0/pump/curve",
        "",
        "needs three points or more but has 2");
  }

  @Test
  void aWrongDriveEfficiencyDoesNotMakeTheOtherFieldsOfThePumpUnknown() {
    DesignDocument document =
        Documents.line()
            .with("/lines/0/pump/driveEfficiency", "9")
            .with("/lines/0/pump/curve/0/head", "95");
    assertThat(problems(document))
        .extracting(Problem::field)
        .containsExactlyInAnyOrder("/lines/0/pump/driveEfficiency", "/lines/0/pump/curve/0/head");
  }

  @Test
  void theMixtureIsGivenInOneWay() {
    assertThat(problems(Documents.line().with("/lines/0/mixture/massFraction", "7 %")))
        .extracting(Problem::field)
        .containsExactly("/lines/0/mixture/volumeFraction", "/lines/0/mixture/massFraction");
  }

  @Test
  void aRunGivenByItsBoreNeedsARoughnessAndMayHaveARating() {
    DesignDocument bore =
        Documents.line()
            .without("/lines/0/route/runs/0/pipe")
            .with("/lines/0/route/runs/0/bore", "100 mm");
    onlyProblem(bore, "/lines/0/route/runs/0/roughness", "", "is missing");
    DesignDocument rough = bore.with("/lines/0/route/runs/0/roughness", "0.05 mm");
    assertThat(problems(rough.with("/lines/0/route/runs/0/rating", "100 psi"))).isEmpty();
    onlyProblem(
        bore.with("/lines/0/route/runs/0/bore", "40 mm")
            .with("/lines/0/route/runs/0/roughness", "5 mm"),
        "/lines/0/route/runs/0/roughness",
        "5 mm",
        "cannot exceed a tenth of the bore, 40 mm");
    onlyProblem(
        Documents.line().with("/lines/0/route/runs/0/rating", "100 psi"),
        "/lines/0/route/runs/0/rating",
        "100 psi",
        "a standard pipe has its own");
  }

  @Test
  void aRuleInWhichNothingGovernsIsRefused() {
    onlyProblem(
        Documents.line()
            .with("/criteria/depositionRoles/gillies-shook-2002", "shown")
            .with("/criteria/depositionRoles/wilson-bounded", "shown"),
        "/criteria/depositionRoles",
        "",
        "must leave gillies-shook-2002 or wilson-bounded governing");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /sand              | 3          | 3    | must be a group of fields
          /sand              | [1]        |      | must be a group of fields
          /lines/0/route             | "a"        | a    | must be a group of fields
          /lines/0/route/runs/0/pipe | "4 in"     | 4 in | must be a group of fields
          /lines/0/route/runs/0/fittings | {"kind": "gate valve"} |  | must be a list
          /criteria          | true       | true | must be a group of fields
          /lines/0/flow/design       | {"a": 1}   |      | must be a text
          /lines/0/flow/design       | true       | true | must be a text
          /lines/0/flow/design       | [1]        |      | must be a text
          /lines/0/flow/design       | ""         |      | nothing is written here
          /lines/0/flow/design       | "  "       | '  ' | nothing is written here
          /lines/0/flow/design       | null       |      | is null
          /lines/0/flow/design       | 460        | 460  | has no unit
          /lines/0/flow/design       | 460        | 460  | "460 L/s" or "460 gal/min"
          /lines/0/flow/design       | 460        | 460  | (0.7926 gal/min to 31700 gal/min)
          /lines/0/flow/design       | "0.1 gal/min" | 0.1 gal/min | must be 0.7926 gal/min to
          /title             | {}         |      | must be a text
          /sand/gradation    | {}         |      | must be a text
          """)
  void aValueOfTheWrongTypeIsNamed(String field, String json, String value, String message) {
    assertThat(problems(raw(Documents.line(), field, json)))
        .anySatisfy(
            problem -> {
              assertThat(problem.field()).isEqualTo(field);
              assertThat(problem.value()).isEqualTo(value == null ? "" : value);
              assertThat(problem.message()).contains(message);
            });
  }

  @Test
  void anEntryOfTheWrongTypeIsNamedByItsPlace() {
    DesignDocument document = Documents.line().insert("/lines/0/pump/curve", 1, "\"here\"");
    onlyProblem(document, "/lines/0/pump/curve/1", "here", "must be a group of fields");
  }

  @Test
  void aProblemBehindAnEntryOfTheWrongTypeIsNamedByItsPlaceInTheList() {
    DesignDocument document =
        Documents.line()
            .insert("/lines/0/pump/curve", 1, "7")
            .with("/lines/0/pump/curve/2/head", "x");
    assertThat(problems(document))
        .extracting(Problem::field)
        .containsExactly("/lines/0/pump/curve/1", "/lines/0/pump/curve/2/head");
  }

  @ParameterizedTest
  @CsvSource({
    "/colour, the fields are: formatVersion",
    "/sand/color, density",
    "/sand/shape/rho, corey",
    "/carrier/totalSolids, temperature",
    "/lines/0/mixture/fraction, volumeFraction",
    "/lines/0/flow/normal, design",
    "/lines/0/route/slope, runs",
    "/lines/0/route/runs/0/Length, length",
    "/lines/0/route/runs/0/pipe/schedule, class",
    "/lines/0/route/runs/0/fittings/0/number, count",
    "/lines/0/pump/power, curve",
    "/lines/0/pump/curve/0/power, head",
    "/criteria/margin, velocityMargin",
    "/criteria/depositionRoles/someone-1999, gillies-shook-2002"
  })
  void anUnknownFieldIsRefusedWithTheFieldsThereAre(String field, String known) {
    onlyProblem(Documents.line().with(field, "1"), field, "1", "is not a field here");
    assertThat(problems(Documents.line().with(field, "1")).get(0).message()).contains(known);
  }

  @Test
  void anUnknownFieldWithASlashInItsNameIsPointedAt() {
    DesignDocument document =
        Documents.parse(Documents.lane().toString().replace("\"sand\"", "\"a/b~c\": 1, \"sand\""));
    onlyProblem(document, "/a~1b~0c", "1", "is not a field here");
    assertThat(document.text(problems(document).get(0).field())).isEqualTo("1");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  "})
  void aBlankNameIsOneThatWasLeftOut(String blank) {
    Design design =
        Documents.line()
            .with("/lines/0/name", blank)
            .with("/lines/0/route/runs/0/name", blank)
            .read()
            .design()
            .orElseThrow();
    assertThat(design.lines().get(0).name()).isEqualTo("Line 1");
    assertThat(design.oneLine().route().runs().get(0).name()).isEqualTo("run 1");
  }

  @Test
  void tenMistakesAreTenProblemsAtOnce() {
    DesignDocument document =
        Documents.line()
            .with("/sand/density", "2.65")
            .with("/carrier/temperature", "warm")
            .with("/lines/0/mixture/volumeFraction", "60 %")
            .with("/lines/0/flow/minimum", "430 ft")
            .with("/lines/0/route/runs/0/length", "-300 ft")
            .with("/lines/0/route/runs/0/pipe/class", "Sch 41")
            .with("/lines/0/route/runs/0/fittings/0/count", "three")
            .with("/lines/0/pump/curveSpeed", "0 rpm")
            .with("/lines/0/pump/curve/1/head", "93")
            .with("/criteria/wearVelocity", "99 m/s");
    assertThat(problems(document))
        .extracting(Problem::field)
        .containsExactlyInAnyOrder(
            "/sand/density",
            "/carrier/temperature",
            "/lines/0/mixture/volumeFraction",
            "/lines/0/flow/minimum",
            "/lines/0/route/runs/0/length",
            "/lines/0/route/runs/0/pipe/class",
            "/lines/0/route/runs/0/fittings/0/count",
            "/lines/0/pump/curveSpeed",
            "/lines/0/pump/curve/1/head",
            "/criteria/wearVelocity");
  }

  @Test
  void anEmptyDocumentNamesWhatADesignNeeds() {
    assertThat(problems(DesignDocument.empty()))
        .extracting(Problem::field)
        .containsExactly("/sand", "/carrier", "/lines");
    assertThat(problems(Documents.parse("{}")))
        .extracting(Problem::field)
        .containsExactly("/formatVersion", "/sand", "/carrier", "/lines");
  }

  @Test
  void aProblemReadsAsOneLine() {
    assertThat(new Problem("/lines/0/flow/design", "0 gpm", "must be more"))
        .hasToString("/lines/0/flow/design = \"0 gpm\": must be more");
    assertThat(new Problem("/lines/0/flow/design", "", "is missing"))
        .hasToString("/lines/0/flow/design: is missing");
  }

  @Test
  void theDefaultsAreThoseThatTheFileReferencePromises() {
    Design design =
        Documents.line()
            .without("/lines/0/flow/minimum")
            .without("/lines/0/flow/maximum")
            .without("/lines/0/route/sourceLevel")
            .without("/title")
            .without("/units")
            .read()
            .design()
            .orElseThrow();
    assertThat(design.title()).isEqualTo("Untitled design");
    assertThat(design.units()).isEqualTo(UnitSystem.METRIC);
    assertThat(design.sand().densityKgM3()).isEqualTo(2650);
    assertThat(design.sand().shape()).isEqualTo(GrainShape.NATURAL);
    FlowSpec flow = design.oneLine().flow();
    assertThat(flow.minimumM3ps()).isEqualTo(flow.designM3ps()).isEqualTo(flow.maximumM3ps());
    RouteSpec route = design.oneLine().route();
    assertThat(route.sourceLevelM()).isZero();
    assertThat(route.outletHeadM()).isZero();
    RouteSpec.RunSpec run = route.runs().get(0);
    assertThat(run.fittings())
        .containsExactlyEntriesOf(Map.of(FittingKind.LONG_RADIUS_ELBOW_90, 3));
    assertThat(run.roughnessM())
        .isEqualTo(run.pipe().orElseThrow().system().material().newRoughnessM());
    PumpSpec.RotodynamicSpec pump = (PumpSpec.RotodynamicSpec) design.pump().orElseThrow();
    assertThat(pump.first().speedPs()).isEqualTo(pump.first().curveSpeedPs());
    assertThat(pump.driveEfficiency()).isEqualTo(0.9);
    Criteria criteria = design.criteria();
    assertThat(criteria.marginFraction()).isEqualTo(0.25);
    assertThat(criteria.marginVelocityMps()).isEqualTo(0.3);
    assertThat(criteria.wearVelocityMps()).isEqualTo(6);
    assertThat(criteria.pressureShare()).isEqualTo(0.72);
    assertThat(criteria.sandCapture()).isEqualTo(0.75);
    assertThat(criteria.gradedSearch()).isTrue();
    assertThat(criteria.roles()).isEmpty();

    LaneSpec lane = Documents.lane().read().design().orElseThrow().lane().orElseThrow();
    assertThat(lane.manning()).isEqualTo(0.015);
    assertThat(lane.runningTimeS()).isEqualTo(86400);
    assertThat(lane.coatingFactor()).isEqualTo(1);
    assertThat(lane.depthM()).isEmpty();
  }

  @Test
  void aChosenRoleIsRead() {
    Design design =
        Documents.line()
            .with("/criteria/depositionRoles/durand-plateau-english", "Counted")
            .read()
            .design()
            .orElseThrow();
    assertThat(design.criteria().roles())
        .containsExactlyEntriesOf(Map.of("durand-plateau-english", Role.COUNTED));
  }
}
