package sandslurry.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.Problem;
import sandslurry.design.document.Reading;
import sandslurry.design.material.CarrierSpec;
import sandslurry.design.material.CarrierSpec.ManureSpec;
import sandslurry.design.material.CarrierSpec.ReadingsSpec;
import sandslurry.design.material.CarrierSpec.RheologySpec;
import sandslurry.design.material.DilutionSpec;
import sandslurry.material.liquid.Bingham;
import sandslurry.material.liquid.HerschelBulkley;
import sandslurry.material.liquid.Newtonian;
import sandslurry.material.liquid.PowerLaw;
import sandslurry.material.liquid.RheogramFit;

/**
 * Reading of a carrier that is not water: what is understood, and what is refused with a reason.
 */
class CarrierReadingTest {
  private static DesignDocument line(String carrier, String more) {
    return Documents.parse(
        """
        {
          "formatVersion": 1,
          "sand": { "d50": "0.3 mm", "d85": "0.5 mm" },
          "carrier": { %s },
          "mixture": { "volumeFraction": "3 %%" },
          "flow": { "design": "20 L/s" },
          "route": { "runs": [ { "bore": "100 mm", "roughness": "0.05 mm", "length": "50 m" } ] }
          %s
        }
        """
            .formatted(carrier, more));
  }

  private static CarrierSpec carrier(String text) {
    Reading reading = line(text, "").read();
    assertThat(reading.problems()).isEmpty();
    return reading.design().orElseThrow().carrier();
  }

  private static List<String> problems(String carrier, String more) {
    Reading reading = line(carrier, more).read();
    assertThat(reading.design()).isEmpty();
    return reading.problems().stream()
        .map(p -> p.field().substring(p.field().lastIndexOf('/') + 1) + " " + p.message())
        .toList();
  }

  private static final String RHEOLOGY =
      "\"kind\": \"rheology\", \"temperature\": \"8 degC\", \"density\": \"1030 kg/m3\", ";

  @Test
  void everyLawIsReadWithItsParameters() {
    assertThat(
            ((RheologySpec) carrier(RHEOLOGY + "\"law\": \"Newtonian\", \"viscosity\": \"5 cP\""))
                .rheology())
        .isEqualTo(new Newtonian(0.005));
    assertThat(
            ((RheologySpec)
                    carrier(
                        RHEOLOGY
                            + "\"law\": \"power law\", \"consistency\": \"1.5\", \"index\":"
                            + " \"0.4\""))
                .rheology())
        .isEqualTo(new PowerLaw(1.5, 0.4));
    assertThat(
            ((RheologySpec)
                    carrier(
                        RHEOLOGY
                            + "\"law\": \"Bingham\", \"yieldStress\": \"3 Pa\","
                            + " \"plasticViscosity\": \"20 cP\""))
                .rheology())
        .isEqualTo(new Bingham(3, 0.02));
    RheologySpec full =
        (RheologySpec)
            carrier(
                RHEOLOGY
                    + "\"law\": \"Herschel-Bulkley\", \"yieldStress\": \"3 Pa\","
                    + " \"consistency\": \"1.5\", \"index\": \"0.4\", \"totalSolids\": \"7 %\"");
    assertThat(full.rheology()).isEqualTo(new HerschelBulkley(3, 1.5, 0.4));
    assertThat(full.totalSolids().orElseThrow()).isCloseTo(0.07, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          "law": "Casson"                                                                   | law
          "law": "power law", "consistency": "0", "index": "0.4"                            | consistency must be 0.0003 to 500
          "law": "power law", "consistency": "501", "index": "0.4"                          | consistency must be 0.0003 to 500
          "law": "power law", "consistency": "1", "index": "0.09"                           | index must be 0.1 to 1.5
          "law": "power law", "consistency": "1", "index": "1.6"                            | index must be 0.1 to 1.5
          "law": "power law", "consistency": "1"                                            | index is missing
          "law": "Bingham", "yieldStress": "0 Pa", "plasticViscosity": "5 cP"               | yieldStress must be 0.001 Pa to 500 Pa
          "law": "Bingham", "yieldStress": "501 Pa", "plasticViscosity": "5 cP"             | yieldStress must be 0.001 Pa to 500 Pa
          "law": "Bingham", "yieldStress": "1 Pa", "plasticViscosity": "5001 cP"            | plasticViscosity must be 0.3 cP to 5000 cP
          "law": "Bingham", "yieldStress": "1 Pa"                                           | plasticViscosity is missing
          "law": "Newtonian", "viscosity": "0.1 cP"                                         | viscosity must be 0.3 cP to 5000 cP
          "law": "Newtonian", "viscosity": "5 cP", "index": "1"                             | index
          "law": "Newtonian", "viscosity": "5 cP", "totalSolids": "31 %"                    | totalSolids must be 0 % to 30 %
          """)
  void aLawWithAWrongParameterIsRefused(String parameters, String message) {
    assertThat(problems(RHEOLOGY + parameters, "")).singleElement().asString().contains(message);
  }

  @Test
  void allThatIsWrongWithALawComesAtOnce() {
    assertThat(
            problems(
                "\"kind\": \"rheology\", \"temperature\": \"60 degC\", \"density\": \"800 kg/m3\","
                    + " \"law\": \"Herschel-Bulkley\", \"yieldStress\": \"600 Pa\","
                    + " \"consistency\": \"-1\", \"index\": \"2\", \"totalSolids\": \"40 %\"",
                ""))
        .satisfiesExactlyInAnyOrder(
            p -> assertThat(p).startsWith("temperature must be"),
            p -> assertThat(p).startsWith("density must be"),
            p -> assertThat(p).startsWith("yieldStress must be"),
            p -> assertThat(p).startsWith("consistency must be"),
            p -> assertThat(p).startsWith("index must be"),
            p -> assertThat(p).startsWith("totalSolids must be"));
  }

  private static String readings(String more, String... rows) {
    StringBuilder text =
        new StringBuilder(
            "\"kind\": \"readings\", \"temperature\": \"8 degC\", \"density\": \"1030 kg/m3\"");
    text.append(more).append(", \"readings\": [");
    for (int i = 0; i < rows.length; i++) {
      String[] pair = rows[i].split(" ");
      text.append(i == 0 ? "" : ",")
          .append("{ \"shearRate\": \"" + pair[0] + " 1/s\", ")
          .append("\"shearStress\": \"" + pair[1] + " Pa\" }");
    }
    return text.append("]").toString();
  }

  @Test
  void readingsAreReadWithWeightingAndLaw() {
    ReadingsSpec plain = (ReadingsSpec) carrier(readings("", "1 1.1", "10 3.1", "100 9.8"));
    assertThat(plain.readings()).hasSize(3);
    assertThat(plain.weighting()).isEqualTo(RheogramFit.Weighting.SAME_PER_CENT);
    assertThat(plain.law()).isEmpty();
    assertThat(plain.totalSolids()).isEmpty();
    ReadingsSpec full =
        (ReadingsSpec)
            carrier(
                readings(
                    ", \"equalErrors\": \"pascals\", \"law\": \"power law\","
                        + " \"totalSolids\": \"6 %\"",
                    "1 1.1", "10 3.1", "100 9.8"));
    assertThat(full.weighting()).isEqualTo(RheogramFit.Weighting.SAME_PASCALS);
    assertThat(full.law()).contains("power law");
    assertThat(full.totalSolids()).isPresent();
  }

  @Test
  void readingsThatCannotBeFittedAreRefusedWithEveryReason() {
    assertThat(problems(readings("", "1 1.1", "10 3.1"), ""))
        .singleElement()
        .asString()
        .contains("at least 3 readings");
    assertThat(problems(readings("", "1 1.1", "10 3.1", "10 3.1"), ""))
        .singleElement()
        .asString()
        .contains("stand in the table twice");
    assertThat(problems(readings(", \"law\": \"Casson\"", "0 1.1", "10 -3", "100 9.8"), ""))
        .satisfiesExactlyInAnyOrder(
            p -> assertThat(p).startsWith("law"),
            p -> assertThat(p).startsWith("shearRate must be"),
            p -> assertThat(p).startsWith("shearStress must be"));
  }

  private static String laboratory(String values) {
    return "\"kind\": \"manure\", \"temperature\": \"8 degC\", \"laboratory\": {" + values + "}";
  }

  @Test
  void aLaboratoryValueLosesItsSand() {
    assertThat(
            ((ManureSpec) carrier(laboratory("\"totalSolids\": \"18 %\", \"sand\": \"9 %\"")))
                .totalSolids())
        .isCloseTo(0.09 / 0.91, within(1e-12));
    // 10.2 % volatile over 0.85 is 12 % of manure solids, so that 6 % of the sample is sand.
    assertThat(
            ((ManureSpec)
                    carrier(
                        laboratory("\"totalSolids\": \"18 %\", \"volatileSolids\": \"10.2 %\"")))
                .totalSolids())
        .isCloseTo(0.12 / 0.94, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          "totalSolids": "18 %", "sand": "19 %"                             | sand cannot be more than the total solids
          "totalSolids": "10 %", "volatileSolids": "9 %"                    | volatileSolids cannot be more than 8.50 %
          "totalSolids": "18 %", "sand": "2 %"                              | totalSolids leaves 16.3 % solids without sand
          "totalSolids": "18 %"                                             | sand
          "totalSolids": "18 %", "sand": "9 %", "volatileSolids": "8 %"     | volatileSolids
          "sand": "9 %"                                                     | totalSolids is missing
          "totalSolids": "18 %", "sand": "9 %", "ash": "8 %"                | ash
          """)
  void aLaboratoryValueThatCannotBeIsRefused(String values, String message) {
    assertThat(problems(laboratory(values), ""))
        .isNotEmpty()
        .anySatisfy(p -> assertThat(p).contains(message));
  }

  @Test
  void manureIsGivenByItsSolidsInOneWay() {
    assertThat(
            problems(
                laboratory("\"totalSolids\": \"18 %\", \"sand\": \"9 %\"")
                    + ", \"totalSolids\": \"8 %\"",
                ""))
        .isNotEmpty();
    assertThat(problems("\"kind\": \"manure\", \"temperature\": \"8 degC\"", "")).isNotEmpty();
  }

  @Test
  void aDilutionNeedsALineAndACarrierOfKnownSolids() {
    String manure = "\"kind\": \"manure\", \"temperature\": \"8 degC\", \"totalSolids\": \"8 %\"";
    Reading reading = line(manure, ", \"dilution\": {}").read();
    DilutionSpec spec = reading.design().orElseThrow().oneLine().dilution().orElseThrow();
    assertThat(spec.totalSolids()).isZero();
    assertThat(spec.mostRatio()).isEqualTo(10);
    assertThat(problems("\"kind\": \"water\", \"temperature\": \"8 degC\"", ", \"dilution\": {}"))
        .singleElement()
        .asString()
        .contains("needs a carrier whose own solids are known");
    assertThat(
            problems(
                RHEOLOGY + "\"law\": \"Newtonian\", \"viscosity\": \"5 cP\"", ", \"dilution\": {}"))
        .singleElement()
        .asString()
        .contains("needs a carrier whose own solids are known");
    assertThat(
            problems(
                manure, ", \"dilution\": { \"totalSolids\": \"14 %\", \"mostRatio\": \"51\" }"))
        .satisfiesExactlyInAnyOrder(
            p -> assertThat(p).startsWith("totalSolids must be 0 % to 13 %"),
            p -> assertThat(p).startsWith("mostRatio must be 0.5 to 50"));
    DesignDocument lane =
        Documents.lane().withPart("/lines/0/dilution", "{ \"totalSolids\": \"1 %\" }");
    assertThat(lane.read().problems())
        .extracting(Problem::field)
        .containsExactly("/lines/0/mixture", "/lines/0/flow", "/lines/0/route");
  }

  @Test
  void manureThickerThanTheTableIsRefusedWithWhatToMeasureInstead() {
    for (String solids : List.of("13.5 %", "16 %")) {
      assertThat(
              problems(
                  "\"kind\": \"manure\", \"temperature\": \"8 degC\", \"totalSolids\": \""
                      + solids
                      + "\"",
                  ""))
          .singleElement()
          .asString()
          .contains("13 %", "viscometer", "from 0.1 to 100 1/s", "carrier as readings");
    }
    // By its measured law the same liquor is taken, whatever its solids.
    carrier(
        RHEOLOGY
            + "\"law\": \"Herschel-Bulkley\", \"yieldStress\": \"60 Pa\","
            + " \"consistency\": \"50\", \"index\": \"0.3\", \"totalSolids\": \"16 %\"");
  }

  @Test
  void aDilutionWithThickerLiquorThanTheCarrierIsRefused() {
    assertThat(
            problems(
                "\"kind\": \"manure\", \"temperature\": \"8 degC\", \"totalSolids\": \"3 %\"",
                ", \"dilution\": { \"totalSolids\": \"5 %\" }"))
        .singleElement()
        .asString()
        .contains("thinner than the carrier");
  }
}
