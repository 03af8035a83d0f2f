package sandslurry.separation.cyclone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sandslurry.correlation.About;
import sandslurry.fact.step.Followed;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainRange;
import sandslurry.material.sand.GrainShape;
import sandslurry.separation.UnitFeed;

/** Hydrocyclones with values worked by hand from the published equations. */
class CycloneByHandTest {
  private static final Liquid WATER = new Liquid(1000, 1e-3);

  /** A model that gives what is asked, with a sharpness of 2. */
  private record Given(double cutSizeM, double underflowShare) implements HydrocycloneModel {
    @Override
    public CyclonePerformance performance(
        HydrocycloneGeometry geometry, CycloneFeed feed, Trace trace) {
      return new CyclonePerformance(cutSizeM, 1e5, underflowShare, 2, List.of());
    }

    @Override
    public About about() {
      throw new UnsupportedOperationException();
    }
  }

  /** 4 L/s of water with sand of 2650 kg/m3, by size of 0.2, 0.4 and 0.8 mm. */
  private static CycloneResult of(HydrocycloneModel model, Double... sandKgps) {
    List<Double> sizes = List.of(0.2e-3, 0.4e-3, 0.8e-3);
    return of(model, feed(sizes.subList(0, sandKgps.length), List.of(sandKgps)));
  }

  private static CycloneResult of(HydrocycloneModel model, UnitFeed feed) {
    return new Hydrocyclone(HydrocycloneGeometry.rietema(0.15, 0.05), 1).evaluate(feed, model);
  }

  private static UnitFeed feed(List<Double> sizesM, List<Double> sandKgps) {
    List<GrainRange> sizes = sizesM.stream().map(size -> new GrainRange(size, size)).toList();
    return new UnitFeed(0.004, WATER, 0, 0, 0, 2650, GrainShape.NATURAL, sizes, sandKgps, 1, 0);
  }

  /** y = 1 - exp(-ln 2 (d/d50c)^m) = 1 - 0.5^((d/d50c)^m), with m = 2. */
  @ParameterizedTest
  @CsvSource({"0.1, 0.159104", "0.2, 0.5", "0.4, 0.9375", "0, 0"})
  void thePartitionIsThatOfRosinAndRammler(double millimetres, double share) {
    CyclonePerformance performance = new CyclonePerformance(0.2e-3, 1e5, 0.3, 2, List.of());
    assertThat(performance.correctedPartition(millimetres * 1e-3)).isCloseTo(share, within(1e-6));
  }

  /**
   * 1.325 kg/s of 0.2 mm and as much of 0.4 mm are 1 L/s: C = 0.2. y = 0.5 and 0.9375, C Y =
   * 0.14375. With Rv = 0.3: Rf = (0.3 - 0.14375)/(1 - 0.14375) = 0.182482; p = Rf + (1 - Rf) y =
   * 0.591241 and 0.948905; sand below 0.2 (p1 + p2)/2 = 0.154015 of the volume fed.
   */
  @Test
  void sandThatFollowsTheWaterIsAddedToThatWhichIsSorted() {
    CycloneResult result = of(new Given(0.2e-3, 0.3), 1.325, 1.325);
    assertThat(result.partition().sand().get(0)).isCloseTo(0.591241, within(1e-6));
    assertThat(result.partition().sand().get(1)).isCloseTo(0.948905, within(1e-6));
    assertThat(result.partition().water()).isCloseTo(0.182482, within(1e-6));
    assertThat(result.underflowSand()).isCloseTo(0.154015 / 0.3, within(1e-5));
    assertThat(result.overflowSand()).isCloseTo((0.2 - 0.154015) / 0.7, within(1e-6));
    assertThat(result.packed()).isFalse();
    // Middle of the first class at 0.2956, of the second 0.7701 further; half of 1.5401 lies 0.6161
    // of the way: 0.2 mm 2^0.6161.
    assertThat(result.underflowMedianM()).isCloseTo(0.306549e-3, within(1e-9));
  }

  /**
   * The same with Rv = 0.15: Rf = 0.00625/0.85625 = 0.0072993, wanted 0.2 Rf + (1 - Rf) 0.14375 =
   * 0.144161, but a packed underflow of 60 % takes 0.09: 0.624304 of it passes.
   */
  @Test
  void anApexTooNarrowPassesWhatAPackedUnderflowHolds() {
    CycloneResult result = of(new Given(0.2e-3, 0.15), 1.325, 1.325);
    assertThat(result.packed()).isTrue();
    assertThat(result.underflowSand()).isCloseTo(0.6, within(1e-9));
    assertThat(result.partition().sand().get(0)).isCloseTo(0.314430, within(1e-6));
    assertThat(result.partition().sand().get(1)).isCloseTo(0.585570, within(1e-6));
    assertThat(result.partition().water()).isCloseTo(0.06 / 0.8, within(1e-9));
    assertThat(result.overflowSand()).isCloseTo(0.11 / 0.85, within(1e-9));
    assertThat(result.ropes()).isTrue();
  }

  /** With Rv = 0.1 no water is left to follow: 0.06 of the 0.14375 sorted passes. */
  @Test
  void whereTheSortedSandAloneFillsTheUnderflowNoneFollowsTheWater() {
    CycloneResult result = of(new Given(0.2e-3, 0.1), 1.325, 1.325);
    assertThat(result.partition().sand().get(0)).isCloseTo(0.06 / 0.14375 * 0.5, within(1e-9));
    assertThat(result.partition().sand().get(1)).isCloseTo(0.06 / 0.14375 * 0.9375, within(1e-9));
  }

  /** A cut of 1 um catches all: the median is that of the feed, worked by logarithms. */
  @Test
  void theMedianLiesBetweenTheMiddlesOfTwoClasses() {
    HydrocycloneModel all = new Given(1e-6, 0.9);
    // Half of 0.4 lies two thirds of the way from 0.1 (0.2 mm) to 0.25 (0.4 mm).
    assertThat(of(all, 0.2, 0.1, 0.1).underflowMedianM())
        .isCloseTo(0.2e-3 * Math.cbrt(4), within(1e-9));
    // A class without sand does not count: three quarters of the way from 0.2 to 0.8 mm.
    assertThat(of(all, 0.1, 0.0, 0.3).underflowMedianM())
        .isCloseTo(0.2e-3 * Math.pow(4, 0.75), within(1e-9));
  }

  /**
   * Plitt, Flintoff and Stuffco: 62.3 (1 - exp(-d/60)) per cent, at d = 60 ln 2 um half of 62.3.
   * Mular and Jull: 0.5385 · 0.1 + 0.4911. Both equations from memory, unverified.
   */
  @Test
  void theLimitsOfRopingAreThoseOfTheirEquations() {
    assertThat(Roping.plittFlintoffStuffco(60e-6 * Math.log(2))).isCloseTo(0.3115, within(1e-12));
    assertThat(Roping.mularJull(0.1)).isCloseTo(0.54495, within(1e-12));
    assertThat(Roping.mularJull(0)).isCloseTo(0.4911, within(1e-12));
  }

  /** 62.3 (1 - exp(-20/60)) = 17.66 per cent for 20 um; the thick overflow governs coarse sand. */
  @Test
  void theLowerOfTheTwoLimitsHolds() {
    UnitFeed fine = feed(List.of(20e-6), List.of(1.325));
    assertThat(of(new Given(1e-6, 0.3), fine).ropingLimit()).isCloseTo(0.1766, within(1e-4));
    CycloneResult coarse = of(new Given(0.2e-3, 0.15), 1.325, 1.325);
    assertThat(coarse.ropingLimit()).isCloseTo(0.5385 * 0.11 / 0.85 + 0.4911, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({"0.49, false", "0.51, true"})
  void itRopesAboveItsLimit(double sand, boolean ropes) {
    CycloneResult some = of(new Given(0.2e-3, 0.3), 1.325, 1.325);
    CycloneResult result =
        new CycloneResult(
            some.performance(), some.feed(), some.partition(), sand, 0, 1e-4, 0.5, false, 1, 1);
    assertThat(result.ropes()).isEqualTo(ropes);
    assertThat(of(new Given(0.2e-3, 0.3), 0.0, 0.0).ropes()).isFalse();
  }

  /** 10 cm, 4 cP, 100 L/min, 1.6 g/cm3: 100^1.2 = 251.1886; 4.5 √(4000/401.902) um. */
  @Test
  void bradleysCutGrowsWithTheRootOfTheViscosity() {
    CycloneFeed feed = new CycloneFeed(0.1 / 60, new Liquid(1000, 4e-3), 0, 2600);
    assertThat(new Bradley1965().cutSizeM(0.1, feed, 1e5).value())
        .isCloseTo(14.1965e-6, within(1e-10));
  }

  /** Rietema (1961): inlet 0.28, vortex finder 0.34, free vortex 5 - 0.4 = 4.6 diameters. */
  @Test
  void theProportionsAreThoseOfRietema() {
    HydrocycloneGeometry geometry = HydrocycloneGeometry.rietema(0.1, 0.02);
    assertThat(geometry.inletM()).isCloseTo(0.028, within(1e-12));
    assertThat(geometry.overflowM()).isCloseTo(0.034, within(1e-12));
    assertThat(geometry.freeVortexM()).isCloseTo(0.46, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 0.1, Double.NaN})
  void anOpeningIsNarrowerThanTheBody(double apexM) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> HydrocycloneGeometry.rietema(0.1, apexM))
        .withMessageContaining("the apex");
  }

  /**
   * The limits named in the Javadoc of each model, asked just inside (nothing is said) and just
   * outside. Columns: model, body [m], inlet, vortex finder and free vortex over body, sand,
   * viscosity [Pa.s], what must be named.
   */
  @ParameterizedTest(name = "{0} {7}")
  @CsvSource({
    "medronho-svarovsky-1984, 0.2,   0.251, 0.34,  4.6,  0.099, 1e-3,   -",
    "medronho-svarovsky-1984, 0.2,   0.309, 0.311, 4.11, 0,     1e-3,   -",
    "medronho-svarovsky-1984, 0.2,   0.28,  0.369, 5.09, 0,     1e-3,   -",
    "medronho-svarovsky-1984, 0.2,   0.249, 0.34,  4.6,  0,     1e-3,   inlet",
    "medronho-svarovsky-1984, 0.2,   0.311, 0.34,  4.6,  0,     1e-3,   inlet",
    "medronho-svarovsky-1984, 0.2,   0.28,  0.309, 4.6,  0,     1e-3,   vortex finder",
    "medronho-svarovsky-1984, 0.2,   0.28,  0.371, 4.6,  0,     1e-3,   vortex finder",
    "medronho-svarovsky-1984, 0.2,   0.28,  0.34,  4.09, 0,     1e-3,   free vortex",
    "medronho-svarovsky-1984, 0.2,   0.28,  0.34,  5.11, 0,     1e-3,   free vortex",
    "medronho-svarovsky-1984, 0.2,   0.28,  0.34,  4.6,  0.101, 1e-3,   volume fraction of sand",
    "plitt-1976,              0.033, 0.28,  0.34,  4.6,  0.449, 0.81e-3, -",
    "plitt-1976,              0.599, 0.28,  0.34,  4.6,  0,     1.54e-3, -",
    "plitt-1976,              0.031, 0.28,  0.34,  4.6,  0,     1e-3,   diameter of the cyclone",
    "plitt-1976,              0.601, 0.28,  0.34,  4.6,  0,     1e-3,   diameter of the cyclone",
    "plitt-1976,              0.2,   0.28,  0.34,  4.6,  0.451, 1e-3,   volume fraction of sand",
    "plitt-1976,              0.2,   0.28,  0.34,  4.6,  0,     1.56e-3, viscosity",
    "plitt-1976,              0.2,   0.28,  0.34,  4.6,  0,     0.79e-3, viscosity",
    "flintoff-plitt-turak-1987, 0.033, 0.28, 0.34, 4.6,  0.449, 5e-2,   -",
    "flintoff-plitt-turak-1987, 0.601, 0.28, 0.34, 4.6,  0,     1e-3,   diameter of the cyclone",
    "flintoff-plitt-turak-1987, 0.2,   0.28, 0.34, 4.6,  0.451, 1e-3,   volume fraction of sand",
  })
  void whatLiesOutsideTheRangeIsNamedAndNothingElse(
      String key,
      double body,
      double inlet,
      double overflow,
      double vortex,
      double sand,
      double viscosity,
      String named) {
    HydrocycloneModel model = HydrocycloneModels.FAMILY.find(key).orElseThrow();
    CyclonePerformance result =
        model.performance(
            new HydrocycloneGeometry(
                body, inlet * body, overflow * body, 0.15 * body, vortex * body),
            new CycloneFeed(body * body / 8, new Liquid(1000, viscosity), sand, 2650));
    assertThat(result.excesses())
        .hasSize(named.equals("-") ? 0 : 1)
        .allSatisfy(e -> assertThat(e.bound().what()).startsWith(named))
        .allSatisfy(e -> assertThat(model.about().bounds()).contains(e.bound()));
  }

  /**
   * u = 0.005/(pi/4 0.2²) = 0.159155 m/s, Re = 31 831, Eu = 371.5 Re^0.116 = 1237, Rw = 1218
   * Eu^-0.3 (Du/D)^4.75 = 143.9 · 0.00328 = 0.47 at 0.30 and 143.9 · 0.00384 = 0.55 at 0.31.
   */
  @Test
  void anApexThatTakesMoreThanHalfTheWaterIsNamed() {
    CycloneFeed feed = new CycloneFeed(0.005, WATER, 0, 2650);
    HydrocycloneModel model = new MedronhoSvarovsky1984();
    assertThat(model.performance(HydrocycloneGeometry.rietema(0.2, 0.30 * 0.2), feed).excesses())
        .isEmpty();
    assertThat(model.performance(HydrocycloneGeometry.rietema(0.2, 0.31 * 0.2), feed).excesses())
        .extracting(e -> e.bound().what())
        .containsExactly("share of water in the underflow");
  }

  /** 1218 (0.9)^4.75 Eu^-0.3 is above 1, and 99 % at most leaves below; the sharpness is 2.45. */
  @Test
  void medronhoAndSvarovskyAtAWideApex() {
    CyclonePerformance wide =
        new MedronhoSvarovsky1984()
            .performance(
                HydrocycloneGeometry.rietema(0.2, 0.18), new CycloneFeed(0.005, WATER, 0.05, 2650));
    assertThat(wide.underflowShare()).isEqualTo(0.99);
    assertThat(wide.sharpness()).isEqualTo(2.45);
  }

  /** The pressure follows Q^1.8: 2^1.8 = 3.482202 for twice the flow. */
  @Test
  void thePressureOfFlintoffPlittAndTurak() {
    HydrocycloneGeometry geometry = HydrocycloneGeometry.rietema(0.2, 0.05);
    HydrocycloneModel model = new FlintoffPlittTurak1987();
    double once =
        model.performance(geometry, new CycloneFeed(0.005, WATER, 0.05, 2650)).pressureDropPa();
    double twice =
        model.performance(geometry, new CycloneFeed(0.010, WATER, 0.05, 2650)).pressureDropPa();
    assertThat(twice / once).isCloseTo(3.482202, within(1e-6));
  }

  @Test
  void theRulesAreFoundByTheirKeys() {
    assertThat(HydrocycloneModels.RULES.find("bradley-1965").orElseThrow())
        .isInstanceOf(Bradley1965.class);
    assertThat(HydrocycloneModels.RULES.find("arterburn-1982").orElseThrow())
        .isInstanceOf(Arterburn1982.class);
  }

  /** Cut and pressure stand in the working, each as its printed equation makes it of its inputs. */
  @Test
  void theWorkingHoldsTheCutAndThePressure() {
    HydrocycloneGeometry geometry = HydrocycloneGeometry.rietema(0.2, 0.05);
    CycloneFeed feed = new CycloneFeed(0.005, new Liquid(1010, 3e-3), 0.05, 2650);
    for (HydrocycloneModel model : HydrocycloneModels.FAMILY.all()) {
      Trace trace = Trace.recording();
      CyclonePerformance performance = model.performance(geometry, feed, trace);
      Followed.all(trace.steps());
      assertThat(trace.steps())
          .extracting(step -> step.equation().symbol())
          .as(model.id())
          .contains("d50c", "dp");
      for (double value : new double[] {performance.cutSizeM(), performance.pressureDropPa()}) {
        assertThat(trace.steps())
            .as(model.id())
            .anySatisfy(s -> assertThat(s.value()).isCloseTo(value, within(1e-12 * value)));
      }
    }
  }
}
