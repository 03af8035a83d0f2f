package sandslurry.design;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.Problem;
import sandslurry.design.station.PumpSpec;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** Reading of several pumps, states, suction, a day, a screw and a gravity pipe. */
class ServiceReadingTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          /lines/0/pump/count               | 7       | must be a whole number from 1 to 6
          /lines/0/pump/arrangement         | beside  | must be one of: series, parallel
          /lines/0/pump/trim                | 60 %    | must be 75 % to 100 %
          /lines/0/pump/motorRating         | 25      | has no unit
          /lines/0/pump/serviceFactor       | 2       | must be 1 to 1.5
          /lines/0/pump/curve/0/npsh        | 5 ft    | needs "npsh" at two points or more
          /lines/0/states/wornHead          | 60 %    | must be 0 % to 50 %
          /lines/0/states/thickest          | 5 %     | belongs to a carrier of kind manure
          /lines/0/states/flushWater        | maybe   | must be one of: yes, no
          /lines/0/operation/batchVolume    | 5 m3    | is missing: a batch belongs to a day's volume
          /lines/0/operation/flushVolume    | 5 m3    | is missing: a volume alone does not tell
          /screw/diameter           | 16 in   | is missing
          /gravityRun/slope         | 40 %    | must be 0.01 % to 30 %
          /lines/0/suction/length           | 3 m     | is missing: give exactly one of
          /lines/0/operation/mostStartsPerHour | 0    | must be a whole number from 1 to 60
          /lines/0/operation/mostStartsPerHour | 6    | is missing: without it no starts are counted
          /lines/0/operation/stopTime       | 4000 s  | must be 0 s to 3600 s
          /lines/0/operation/flushCurve/0/flow | 1 L/s | is missing
          /lines/0/states/thickestSand      | 50 %    | must be 0 % to 40 %
          /screw/scrapeTime         | 30 min  | belongs to the pens of a plant, and there is none
          """)
  void aBadValueIsNamed(String field, String value, String message) {
    assertThat(Documents.line().with(field, value).read().problems())
        .anySatisfy(problem -> assertThat(problem.message()).contains(message));
  }

  @Test
  void whatCannotBeBelowAnotherIsRefused() {
    assertThat(
            Documents.line()
                .with("/lines/0/states/coldest", "20 degC")
                .with("/lines/0/states/warmest", "10 degC")
                .with("/lines/0/states/lowSourceLevel", "2 m")
                .with("/lines/0/states/highSourceLevel", "1 m")
                .read()
                .problems())
        .extracting(Problem::field)
        .containsExactlyInAnyOrder("/lines/0/states/warmest", "/lines/0/states/highSourceLevel");
  }

  @Test
  void aMeasuredLiquidHasNoOtherTemperature() {
    DesignDocument measured =
        Documents.line()
            .with("/carrier/kind", "measured")
            .with("/carrier/density", "1010 kg/m3")
            .with("/carrier/viscosity", "4 cP");
    assertThat(measured.read().problems()).isEmpty();
    assertThat(measured.with("/lines/0/states/coldest", "4 degC").read().problems())
        .singleElement()
        .extracting(Problem::field)
        .isEqualTo("/lines/0/states/coldest");
  }

  @Test
  void pulsationNeedsCylinders() {
    DesignDocument piston =
        Documents.line()
            .without("/lines/0/pump")
            .with("/lines/0/pump/kind", "piston")
            .with("/lines/0/pump/displacement", "5 gal")
            .with("/lines/0/pump/strokeRate", "28 1/min")
            .with("/lines/0/pump/volumetricEfficiency", "90 %")
            .with("/lines/0/pump/pressureLimit", "150 psi");
    assertThat(piston.with("/lines/0/pump/rodShare", "10 %").read().problems())
        .singleElement()
        .extracting(Problem::field)
        .isEqualTo("/lines/0/pump/rodShare");
    assertThat(piston.with("/lines/0/pump/cylinders", "2").read().problems()).isEmpty();
  }

  @Test
  void aSuctionWithoutAPumpAndStatesWithoutARouteAreRefused() {
    assertThat(
            Documents.line()
                .without("/lines/0/pump")
                .with("/lines/0/suction/length", "3 m")
                .read()
                .problems())
        .extracting(Problem::message)
        .contains("belongs to a pump, and there is none");
    assertThat(Documents.lane().with("/lines/0/states/coldest", "4 degC").read().problems())
        .extracting(Problem::field)
        .contains("/lines/0/route");
  }

  @Test
  void twoPumpsOfOneNameAreRefused() {
    String other =
        "{\"name\": \"B\", \"curveSpeed\": \"1750 rpm\", \"curve\": ["
            + "{\"flow\": \"0 gpm\", \"head\": \"90 ft\", \"efficiency\": \"0 %\"},"
            + "{\"flow\": \"300 gpm\", \"head\": \"80 ft\", \"efficiency\": \"45 %\"},"
            + "{\"flow\": \"600 gpm\", \"head\": \"55 ft\", \"efficiency\": \"45 %\"}]}";
    assertThat(
            Documents.line()
                .insert("/lines/0/pump/others", 0, other)
                .insert("/lines/0/pump/others", 1, other)
                .read()
                .problems())
        .singleElement()
        .extracting(Problem::field)
        .isEqualTo("/lines/0/pump/others/1/name");
  }

  @Test
  void anotherPumpHasWhatIsGivenOfItAndElseWhatTheFirstHas() {
    String bare =
        "{\"name\": \"B\", \"curveSpeed\": \"1750 rpm\", \"curve\": ["
            + "{\"flow\": \"0 gpm\", \"head\": \"90 ft\", \"efficiency\": \"0 %\"},"
            + "{\"flow\": \"300 gpm\", \"head\": \"80 ft\", \"efficiency\": \"45 %\"},"
            + "{\"flow\": \"600 gpm\", \"head\": \"55 ft\", \"efficiency\": \"45 %\"}]}";
    DesignDocument two =
        Documents.line()
            .with("/lines/0/pump/impeller", "12 in")
            .with("/lines/0/pump/motorRating", "25 hp")
            .with("/lines/0/pump/driveEfficiency", "88 %")
            .insert("/lines/0/pump/others", 0, bare);
    PumpSpec.RunningPump as = second(two);
    assertThat(as.impellerOfFirst()).isTrue();
    assertThat(as.impellerM()).hasValue(12 * 0.0254);
    assertThat(as.driveEfficiency()).isEqualTo(0.88);
    assertThat(UnitSystem.US.show(Kind.POWER, as.motor().orElseThrow().ratingW()))
        .isEqualTo("25.0 hp");
    assertThat(as.wornHead()).isEmpty();
    DesignDocument given =
        two.with("/lines/0/pump/others/0/impeller", "10 in")
            .with("/lines/0/pump/others/0/wornHead", "15 %")
            .with("/lines/0/pump/others/0/driveEfficiency", "80 %")
            .with("/lines/0/pump/others/0/motorRating", "15 hp")
            .with("/lines/0/pump/others/0/serviceFactor", "1.15");
    PumpSpec.RunningPump own = second(given);
    assertThat(own.impellerOfFirst()).isFalse();
    assertThat(own.impellerM()).hasValue(10 * 0.0254);
    assertThat(own.wornHead().orElseThrow()).isEqualTo(0.15);
    assertThat(own.driveEfficiency()).isEqualTo(0.8);
    assertThat(own.motor().orElseThrow().serviceFactor()).isEqualTo(1.15);
  }

  private static PumpSpec.RunningPump second(DesignDocument document) {
    assertThat(document.read().problems()).isEmpty();
    PumpSpec pump = document.read().design().orElseThrow().pump().orElseThrow();
    return ((PumpSpec.RotodynamicSpec) pump).pumps().get(1);
  }

  @Test
  void theGreatestFlowOfAPumpLiesAboveItsLeast() {
    DesignDocument line = Documents.line().with("/lines/0/pump/minimumFlow", "100 gpm");
    assertThat(line.with("/lines/0/pump/maximumFlow", "500 gpm").read().problems()).isEmpty();
    assertThat(line.with("/lines/0/pump/maximumFlow", "100 gpm").read().problems())
        .singleElement()
        .extracting(Problem::field)
        .isEqualTo("/lines/0/pump/maximumFlow");
  }

  private static DesignDocument piston() {
    return Documents.line()
        .without("/lines/0/pump")
        .with("/lines/0/pump/kind", "piston")
        .with("/lines/0/pump/displacement", "50 gal")
        .with("/lines/0/pump/strokeRate", "10 1/min")
        .with("/lines/0/pump/volumetricEfficiency", "90 %")
        .with("/lines/0/pump/pressureLimit", "150 psi")
        .with("/lines/0/pump/cylinders", "2");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          rodToCrank    | 5      | belongs to a crank
          cylinders     | 3      | must be one, or two that act singly
          acting        | double | must be one, or two that act singly
          dwell         | 3 s    | leave no time for the strokes
          changeover    | 1.6 s  | leave no time for the strokes
          vesselGas     | 0 L    | must be 0.1 L to 20000 L
          """)
  void aHydraulicDriveIsCheckedAgainstItsStrokes(String field, String value, String message) {
    DesignDocument ram = piston().with("/lines/0/pump/cylinderDrive", "hydraulic");
    assertThat(ram.read().problems()).isEmpty();
    assertThat(ram.with("/lines/0/pump/" + field, value).read().problems())
        .anySatisfy(problem -> assertThat(problem.message()).contains(message));
  }

  @Test
  void aCrankHasNoDwellAndAVesselIsGivenOnce() {
    assertThat(piston().with("/lines/0/pump/dwell", "0.2 s").read().problems())
        .singleElement()
        .extracting(Problem::message)
        .asString()
        .contains("hydraulic cylinders");
    assertThat(
            piston()
                .with("/lines/0/pump/vesselGas", "100 L")
                .with("/lines/0/pump/pulsationPassed", "5 %")
                .read()
                .problems())
        .singleElement()
        .extracting(Problem::field)
        .isEqualTo("/lines/0/pump/vesselGas");
  }

  @Test
  void theFlushHasOneSupply() {
    DesignDocument given = Documents.line().with("/lines/0/operation/flushFlow", "300 gpm");
    assertThat(given.read().problems()).isEmpty();
    assertThat(given.with("/lines/0/operation/flushPump", "yes").read().problems()).isNotEmpty();
    assertThat(given.with("/lines/0/operation/flushLevel", "10 m").read().problems()).isNotEmpty();
    assertThat(Documents.line().with("/lines/0/operation/flushPump", "yes").read().problems())
        .isEmpty();
    assertThat(
            Documents.line()
                .without("/lines/0/pump")
                .with("/lines/0/operation/flushPump", "yes")
                .read()
                .problems())
        .singleElement()
        .extracting(Problem::message)
        .asString()
        .contains("there is none");
    DesignDocument curve =
        Documents.line()
            .insert("/lines/0/operation/flushCurve", 0, "{\"flow\": \"0 L/s\", \"head\": \"20 m\"}")
            .insert(
                "/lines/0/operation/flushCurve", 1, "{\"flow\": \"40 L/s\", \"head\": \"10 m\"}");
    assertThat(curve.read().problems()).isEmpty();
    assertThat(curve.with("/lines/0/operation/flushCurve/1/flow", "0 L/s").read().problems())
        .singleElement()
        .extracting(Problem::field)
        .isEqualTo("/lines/0/operation/flushCurve/1/flow");
  }

  @Test
  void aLiquidOfItsOwnIsDescribedInTheStateByItsOwnNumbers() {
    DesignDocument measured =
        Documents.line()
            .with("/carrier/kind", "measured")
            .with("/carrier/density", "1010 kg/m3")
            .with("/carrier/viscosity", "4 cP");
    DesignDocument cold =
        measured
            .with("/lines/0/states/coldestCarrier/kind", "measured")
            .with("/lines/0/states/coldestCarrier/temperature", "2 degC")
            .with("/lines/0/states/coldestCarrier/density", "1012 kg/m3")
            .with("/lines/0/states/coldestCarrier/viscosity", "7 cP");
    assertThat(cold.read().problems()).isEmpty();
    assertThat(cold.with("/lines/0/states/coldestCarrier/viscosity", "7").read().problems())
        .singleElement()
        .extracting(Problem::field)
        .isEqualTo("/lines/0/states/coldestCarrier/viscosity");
    assertThat(
            Documents.line()
                .with("/lines/0/states/coldest", "4 degC")
                .with("/lines/0/states/coldestCarrier/kind", "water")
                .with("/lines/0/states/coldestCarrier/temperature", "2 degC")
                .read()
                .problems())
        .singleElement()
        .extracting(Problem::field)
        .isEqualTo("/lines/0/states/coldestCarrier");
  }
}
