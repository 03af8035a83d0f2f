package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.assessment.plant.PlantResult.Accounts;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.DesignTextException;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Severity;
import sandslurry.golden.Shipped;

/** A plant that loses its sand is told where it goes, whatever an even feed would give. */
class RecoveryCureTest {
  private static final String BOX =
      "{'name': 'Box', 'kind': 'box', 'in': '%s', 'sand': 'sand', 'overflow': 'o',"
          + " 'length': '4 m', 'width': '2 m'}, ";
  private static final String PRESS =
      "{'name': 'Press', 'kind': 'fibreSeparator', 'in': 'manure, wash', 'cake': 'cake',"
          + " 'liquid': 'pressed', 'opening': '0.5 mm'}, ";
  private static final String PIT =
      "{'name': 'Pit', 'kind': 'pit', 'in': 'manure, wash', 'capacity': '60 m3',"
          + " 'pumps': [{'stream': 'pumped', 'flow': '25 m3/h'}]}, ";

  private static final String TANK =
      "{'name': 'Tank', 'kind': 'pit', 'in': 'o', 'capacity': '100 m3', 'weirVolume': '80 m3',"
          + " 'overflow': 'surplus', 'pumps': [{'stream': 'recycle', 'flow': '12 m3/h'}]}, ";

  private static Assessment plant(String units, String toStorage, String products) {
    String text =
        """
        {'formatVersion': 2, 'sand': {'gradation': 'ASTM C33'},
         'carrier': {'kind': 'water', 'temperature': '12 degC'},
         'plant': {
           'pens': [{'name': 'Pen', 'stream': 'manure', 'cows': '400', 'stalls': '400',
             'sandPerStall': '20 kg/d', 'water': '4 m3/d'}],
           'waters': [{'stream': 'wash', 'flow': '6 m3/h'}],
           'units': [%s {'name': 'Lagoon', 'kind': 'storage', 'in': '%s', 'floorLength': '80 m',
             'floorWidth': '50 m', 'depth': '4 m', 'months': [{'name': 'year', 'length': '365 d'}]}],
           'products': [%s]}}
        """
            .formatted(units, toStorage, products)
            .replace('\'', '"');
    try {
      return Shipped.assessment(DesignDocument.parse(text));
    } catch (DesignTextException e) {
      throw new AssertionError(e);
    }
  }

  private static String product(String stream, String use) {
    return "{'stream': '%s', 'use': '%s'}".formatted(stream, use);
  }

  @ParameterizedTest
  @CsvSource({
    "no unit, no-separation",
    "press first, lost-with-fibre",
    "pit that is not mixed, lost-in-pits",
    "liquor that comes back with its fibre, lost-held",
    "sand to waste, lost-as-waste"
  })
  void theCureIsWhereTheSandGoes(String what, String cure) {
    Assessment assessment =
        switch (what) {
          case "no unit" -> plant("", "manure, wash", "");
          case "press first" ->
              plant(
                  PRESS + BOX.formatted("pressed"),
                  "o",
                  product("sand", "bedding") + ", " + product("cake", "fibre"));
          case "pit that is not mixed" ->
              plant(PIT + BOX.formatted("pumped"), "o", product("sand", "bedding"));
          case "liquor that comes back with its fibre" ->
              plant(
                  BOX.formatted("manure, recycle") + TANK,
                  "surplus, wash",
                  product("sand", "bedding"));
          default -> plant(BOX.formatted("manure, wash"), "o", product("sand", "waste"));
        };

    assertThat(recovery(assessment).severity()).isEqualTo(Severity.FAIL);
    assertThat(recovery(assessment).cures()).containsExactly(cure);
  }

  private static Finding recovery(Assessment assessment) {
    return assessment.findings().stream()
        .filter(finding -> finding.id().equals("plant.recovery-low"))
        .findFirst()
        .orElseThrow();
  }

  /**
   * A lane that would keep the sand of an even feed, flushed three times a day at some hundreds of
   * litres a second: the flush runs faster than the scour velocity, and the pool of the lagoon that
   * the water comes from, which takes years to come to rest, hides none of it.
   */
  @Test
  void aLaneThatTheFlushScoursFails() throws DesignTextException {
    String text =
        """
        {'formatVersion': 2, 'sand': {'gradation': 'ASTM C33'},
         'carrier': {'kind': 'water', 'temperature': '12 degC'},
         'plant': {
           'pens': [{'name': 'Pen', 'stream': 'manure', 'cows': '400', 'stalls': '400',
             'sandPerStall': '20 kg/d', 'water': '4 m3/d', 'scrapeInterval': '8 h',
             'firstScraping': '5 h', 'flush': {'in': 'flush', 'volume': '15 m3',
             'rate': '0.25 m3/s', 'length': '100 m', 'width': '3.6 m', 'slope': '3 %'}}],
           'units': [
             {'name': 'Lane', 'kind': 'lane', 'in': 'manure', 'sand': 'sand', 'overflow': 'o',
              'reaches': [{'length': '60 m', 'width': '3.6 m', 'slope': '0.25 %',
                'sandStorageDepth': '300 mm'}]},
             {'name': 'Lagoon', 'kind': 'storage', 'in': 'o', 'floorLength': '80 m',
              'floorWidth': '50 m', 'sideSlope': '2', 'depth': '4 m', 'fibreSettling': '60 %',
              'finesSettling': '30 %', 'pumps': [{'stream': 'flush', 'flow': '1.875 m3/h'}],
              'months': [{'name': 'year', 'length': '365 d'}]}],
           'products': [{'stream': 'sand', 'use': 'bedding'}]}}
        """
            .replace('\'', '"');
    Accounts accounts =
        Shipped.assessment(DesignDocument.parse(text))
            .plant()
            .orElseThrow()
            .accounts()
            .orElseThrow();
    Finding recovery = recovery(Shipped.assessment(DesignDocument.parse(text)));

    assertThat(accounts.basis().compared().get(0).atRest()).isGreaterThan(0.85);
    assertThat(accounts.basis().byDay()).isTrue();
    assertThat(accounts.capture().base()).isLessThan(0.3);
    // Sand that nothing takes up again would stay: the outlooks have days of their own.
    assertThat(accounts.capture().high()).isGreaterThan(0.4);
    assertThat(accounts.capture().low()).isLessThan(accounts.capture().base());
    assertThat(recovery.severity()).isEqualTo(Severity.FAIL);
    assertThat(recovery.cures()).containsExactly("even-feed");
  }
}
