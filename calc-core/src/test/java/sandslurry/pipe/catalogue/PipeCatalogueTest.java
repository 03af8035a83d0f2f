package sandslurry.pipe.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.units.Measure;

class PipeCatalogueTest {
  @Test
  void everyStandardHasSizesAndClassesAndEveryPipeIsFoundByItsOwnNames() {
    assertThat(PipeCatalogue.systems())
        .containsExactly("ASME B36.10M", "ASTM D1785", "ASTM D2241", "ASTM F714", "ISO 4427");
    for (StandardPipe pipe : PipeCatalogue.all()) {
      String standard = pipe.system().standard();
      assertThat(PipeCatalogue.get(standard, pipe.size(), pipe.wallClass())).isSameAs(pipe);
      assertThat(PipeCatalogue.sizes(standard)).contains(pipe.size());
      assertThat(PipeCatalogue.classes(standard)).contains(pipe.wallClass());
    }
    assertThat(PipeCatalogue.all()).hasSize(6 * 4 + 6 * 2 + 6 * 4 + 6 * 7 + 12 * 5);
  }

  @Test
  void inchPipeRunsFromNps3To12AndIsoPipeFrom90To355() {
    assertThat(PipeCatalogue.sizes("ASTM D2241"))
        .containsExactly("3 in", "4 in", "6 in", "8 in", "10 in", "12 in");
    assertThat(PipeCatalogue.sizes("ISO 4427")).startsWith("90 mm", "110 mm").endsWith("355 mm");
    assertThat(PipeCatalogue.classes("ASTM F714"))
        .containsExactly("DR 9", "DR 11", "DR 13.5", "DR 17", "DR 21", "DR 26", "DR 32.5");
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '~',
      value = {
        "ASTM D1785, 6 in, Sch 40",
        "D1785, 6\", schedule 40",
        "astm d1785, NPS 6, SCH40",
        "~PVC, ASTM D1785~, DN 150, Sch. 40",
        "ASTM D1785, DN150, sch-40",
        "ASTM D1785, 6-inch, Sched 40",
        "ASTM D1785, NPS 6 in, sch 40",
      })
  void aPipeIsFoundUnderTheUsualSpellings(String system, String size, String wallClass) {
    assertThat(PipeCatalogue.find(system, size, wallClass))
        .hasValueSatisfying(
            pipe -> assertThat(pipe.words()).isEqualTo("6 in Sch 40 (PVC, ASTM D1785)"));
  }

  @Test
  void dimensionRatiosAreFoundAsSdrAndAsDr() {
    assertThat(PipeCatalogue.find("ASTM F714", "8 in", "SDR 17")).isPresent();
    assertThat(PipeCatalogue.find("ASTM D2241", "8 in", "DR 26")).isPresent();
    assertThat(PipeCatalogue.find("ISO 4427", "160mm", "sdr17"))
        .isEqualTo(PipeCatalogue.find("ISO 4427", "DN 160", "SDR 17"))
        .isPresent();
  }

  @Test
  void anInchPipeIsNotFoundByMillimetresNorAnIsoPipeByInches() {
    assertThat(PipeCatalogue.find("ASTM D1785", "150 mm", "Sch 40")).isEmpty();
    assertThat(PipeCatalogue.find("ASTM D1785", "6", "Sch 40")).isEmpty();
    assertThat(PipeCatalogue.find("ISO 4427", "6 in", "SDR 17")).isEmpty();
    assertThat(PipeCatalogue.find("ISO 4427", "99999999999 mm", "SDR 17")).isEmpty();
  }

  @Test
  void aRefusalSaysWhichOfTheThreeIsUnknownAndListsWhatExists() {
    assertThatThrownBy(() -> PipeCatalogue.get("ASTM X1", "6 in", "Sch 40"))
        .hasMessageContaining("ASTM X1")
        .hasMessageContaining("ASTM D1785")
        .hasMessageContaining("ISO 4427");
    assertThatThrownBy(() -> PipeCatalogue.get("ASTM D1785", "7 in", "Sch 40"))
        .hasMessageContaining("7 in")
        .hasMessageContaining("3 in, 4 in, 6 in");
    assertThatThrownBy(() -> PipeCatalogue.get("ASTM D1785", "6\"", "Sch 10"))
        .hasMessageContaining("Sch 10")
        .hasMessageContaining("Sch 40, Sch 80");
    assertThatThrownBy(() -> PipeCatalogue.sizes("nothing")).hasMessageContaining("ASME B36.10M");
  }

  @Test
  void theNextSmallerPipeIsTheOneBeforeInTheSameSystemAndClass() {
    StandardPipe eight = PipeCatalogue.get("ASTM D2241", "8 in", "SDR 26");
    List<StandardPipe> family = PipeCatalogue.sameSystemAndClass(eight);
    assertThat(family)
        .hasSize(6)
        .isSortedAccordingTo(Comparator.comparingDouble(StandardPipe::largestBoreM));
    assertThat(family.get(family.indexOf(eight) - 1).size()).isEqualTo("6 in");
  }

  @Test
  void theMeanBoreOfPlasticPipeIsALittleLessThanTheLargestAndOfSteelTheSame() {
    for (StandardPipe pipe : PipeCatalogue.all()) {
      double headLossRatio = Math.pow(pipe.largestBoreM() / pipe.meanBoreM(), 5);
      if (pipe.system().material() == PipeMaterial.STEEL) {
        assertThat(headLossRatio).as(pipe.words()).isEqualTo(1);
      } else {
        assertThat(headLossRatio).as(pipe.words()).isBetween(1.015, 1.10);
      }
    }
  }

  @Test
  void everyLeastWallIsThatOfItsDimensionRatioToThePrintedDigits() {
    for (StandardPipe pipe : PipeCatalogue.all()) {
      if (pipe.wallClass().contains("DR ")) {
        double ratio = Double.parseDouble(pipe.wallClass().replaceAll("S?DR ", ""));
        // ISO 4065 takes the ratios from the R10 series (26 is 26.18) and rounds up to 0.1 mm.
        double play = pipe.system() == PipeSystem.ISO_4427 ? 2.3e-4 : 4e-5;
        assertThat(pipe.leastWallM())
            .as(pipe.words())
            .isCloseTo(pipe.outsideDiameterM() / ratio, within(play));
      }
    }
  }

  @Test
  void wallsAndRatingsFallAsTheDimensionRatioGrows() {
    for (String system : List.of("ASTM D2241", "ASTM F714", "ISO 4427")) {
      for (String size : PipeCatalogue.sizes(system)) {
        double wall = Double.POSITIVE_INFINITY;
        double rating = Double.POSITIVE_INFINITY;
        for (String wallClass : PipeCatalogue.classes(system)) {
          StandardPipe pipe = PipeCatalogue.get(system, size, wallClass);
          assertThat(pipe.leastWallM()).as(pipe.words()).isLessThan(wall);
          assertThat(pipe.ratingPa().orElseThrow()).as(pipe.words()).isLessThan(rating);
          wall = pipe.leastWallM();
          rating = pipe.ratingPa().orElseThrow();
        }
      }
    }
  }

  @Test
  void steelHasNoRatingAtAnyTemperature() {
    StandardPipe steel = PipeCatalogue.get("ASME B36.10M", "6 in", "Sch 40");
    assertThat(steel.ratingPa()).isEmpty();
    assertThat(steel.ratingPa(293)).isEmpty();
  }

  @Test
  void aColdPlasticPipeKeepsItsRatingAndAWarmOneLosesMoreAndMoreOfIt() {
    StandardPipe pvc = PipeCatalogue.get("ASTM D2241", "6 in", "SDR 26");
    double rating = pvc.ratingPa().orElseThrow();
    assertThat(pvc.ratingPa(275)).hasValue(rating);
    double before = rating;
    for (double kelvin = 297; kelvin < 333; kelvin += 1) {
      OptionalDouble warm = pvc.ratingPa(kelvin);
      assertThat(warm).isPresent();
      assertThat(warm.getAsDouble()).isLessThan(before);
      before = warm.getAsDouble();
    }
    assertThat(pvc.ratingPa(334)).isEmpty();
    assertThat(pvc.ratingPa(Double.NaN)).isEmpty();
  }

  @Test
  void aPipeWithoutABoreIsRefused() {
    double inch = Measure.LENGTH.entry("in").toSi(1);
    assertThatThrownBy(
            () ->
                new StandardPipe(
                    PipeSystem.ASTM_F714, "1 in", "DR 2", inch, inch, inch, OptionalDouble.empty()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("wall");
  }
}
