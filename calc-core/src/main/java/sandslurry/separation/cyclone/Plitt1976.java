package sandslurry.separation.cyclone;

import java.util.ArrayList;
import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Physics;
import sandslurry.correlation.Published;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/**
 * The hydrocyclone model of Plitt.
 *
 * <pre>
 * d50c = 50.5 Dc^0.46 Di^0.6 Do^1.21 exp(0.063 C) / (Du^0.71 h^0.38 Q^0.45 (ρs − ρ)^0.5)
 * P    = 1.88 Q^1.78 exp(0.0055 C) / (Dc^0.37 Di^0.94 h^0.28 (Du² + Do²)^0.87)
 * S    = 1.9 (Du/Do)^3.31 h^0.54 (Du² + Do²)^0.36 exp(0.0054 C) / (Dc^1.11 H^0.24)
 * m    = 1.94 exp(−1.58 S/(1 + S)) (Dc² h/Q)^0.15
 * </pre>
 *
 * <p>d50c corrected cut size [µm]; Dc, Di, Do, Du diameters of cyclone, inlet, vortex finder and
 * apex and h height of the free vortex [cm]; Q flow of the mixture into one cyclone [L/min]; C sand
 * in per cent by volume; ρs, ρ densities [g/cm³]; P pressure drop [kPa]; H the same as head of the
 * mixture [m]; S volume of underflow over overflow; m sharpness. Derived here from S: share of the
 * feed that leaves below, S/(1 + S).
 *
 * <p>Fitted to tests in dilute water; the range of 32 to 600 mm is from memory, unverified.
 * <b>There is no viscosity in it</b>: the liquor counts as water, and a thick liquor is reported as
 * outside the range. {@link FlintoffPlittTurak1987} mends that.
 *
 * <p>Source: Plitt (1976), CIM Bulletin 69(776):114-123. All four formulas were read in the
 * documentation of a public set of mineral-processing spreadsheet functions
 * (Dr-Alireza-Ghasemi/mineral-processing-functions), which has 50.21 for the 50.5 that stands here
 * from memory; the difference is 0.6 %.
 */
final class Plitt1976 extends Published implements HydrocycloneModel {
  /** Viscosity of water from 5 to 30 °C, in which the tests were made (an assumption). */
  static final Bound WATER_VISCOSITY =
      new Bound("viscosity of the liquor", Kind.VISCOSITY, 0.8e-3, 1.55e-3);

  private static final Bound BODY = new Bound("diameter of the cyclone", Kind.BORE, 0.032, 0.6);
  private static final Bound SAND = new Bound("volume fraction of sand", Kind.PERCENT, 0, 0.45);

  private static final Citation SOURCE =
      new Citation("Plitt", 1976, "CIM Bulletin 69(776):114-123; seen in secondary sources");
  private static final Equation CUT =
      SOURCE.equation(
          "d50c",
          "cut size of the grains that do not follow the water",
          "1e-6 * 50.5 D_c[cm]^0.46 D_i[cm]^0.6 D_o[cm]^1.21 exp(6.3 C) / (D_u[cm]^0.71 h[cm]^0.38"
              + " Q[L/min]^0.45 ((rho_s - rho)/1000)^0.5)",
          Kind.GRAIN,
          "D_c m, D_i m, D_o m, D_u m, h m, Q m3/s, C, rho_s kg/m3, rho kg/m3");
  private static final Equation PRESSURE =
      SOURCE.equation(
          "dp",
          "pressure drop of the cyclone",
          "1880 Q[L/min]^1.78 exp(0.55 C) / (D_c[cm]^0.37 D_i[cm]^0.94 h[cm]^0.28 (D_u[cm]^2 +"
              + " D_o[cm]^2)^0.87)",
          Kind.PRESSURE,
          "Q m3/s, C, D_c m, D_i m, h m, D_u m, D_o m");
  private static final Equation HEAD =
      SOURCE.equation(
          "H", "the same as head of the feed", "dp / (rho_m g)", Kind.HEAD, "dp Pa, rho_m kg/m3");
  private static final Equation SPLIT =
      SOURCE.equation(
          "S",
          "flow below over flow above",
          "1.9 (D_u/D_o)^3.31 h[cm]^0.54 (D_u[cm]^2 + D_o[cm]^2)^0.36 exp(0.54 C) / (D_c[cm]^1.11"
              + " H^0.24)",
          Kind.NUMBER,
          "D_u m, D_o m, h m, C, D_c m, H m");
  private static final Equation BELOW =
      SOURCE.equation(
          "R_f", "share of the feed that leaves below", "S / (1 + S)", Kind.PERCENT, "S");
  private static final Equation SHARPNESS =
      SOURCE.equation(
          "m",
          "sharpness of the cut",
          "1.94 exp(-1.58 R_f) (D_c[cm]^2 h[cm]/Q[L/min])^0.15",
          Kind.NUMBER,
          "R_f, D_c m, h m, Q m3/s");

  Plitt1976() {
    super(
        "plitt-1976",
        "Plitt",
        SOURCE,
        List.of(BODY, SAND, WATER_VISCOSITY),
        CUT,
        PRESSURE,
        SPLIT,
        SHARPNESS);
  }

  @Override
  public CyclonePerformance performance(
      HydrocycloneGeometry geometry, CycloneFeed feed, Trace trace) {
    Scaled in = new Scaled(geometry, feed, trace);
    double cut = 50.5 * in.cutOfGeometryAndFlow() / Math.sqrt(in.densityDifference);
    double pressure = 1.88 * Math.pow(in.flow, 1.78) * in.pressureOfGeometryAndSand();
    in.steps(CUT, PRESSURE, cut, pressure);
    List<Bound.Excess> excesses = new ArrayList<>(in.excesses(feed));
    WATER_VISCOSITY.check(feed.liquid().viscosityPaS()).ifPresent(excesses::add);
    return in.performance(cut, pressure, feed, excesses);
  }

  /** The inputs in the units of the publication, and what both versions of the model share. */
  static final class Scaled {
    final double flow;
    final double densityDifference;
    private final double body;
    private final double inlet;
    private final double overflow;
    private final double underflow;
    private final double vortex;
    private final double sandPercent;
    private final double openings;

    private final HydrocycloneGeometry geometry;
    private final CycloneFeed feed;
    private final Trace trace;

    Scaled(HydrocycloneGeometry geometry, CycloneFeed feed, Trace trace) {
      this.geometry = geometry;
      this.feed = feed;
      this.trace = trace;
      body = InUnit.CENTIMETRE.of(geometry.bodyM());
      inlet = InUnit.CENTIMETRE.of(geometry.inletM());
      overflow = InUnit.CENTIMETRE.of(geometry.overflowM());
      underflow = InUnit.CENTIMETRE.of(geometry.underflowM());
      vortex = InUnit.CENTIMETRE.of(geometry.freeVortexM());
      flow = InUnit.LITRE_PER_MINUTE.of(feed.flowM3ps());
      sandPercent = InUnit.PERCENT.of(feed.volumeFraction());
      densityDifference =
          InUnit.GRAM_PER_CUBIC_CENTIMETRE.of(feed.sandDensityKgM3() - feed.liquid().densityKgM3());
      openings = underflow * underflow + overflow * overflow;
    }

    double cutOfGeometryAndFlow() {
      return Math.pow(body, 0.46)
          * Math.pow(inlet, 0.6)
          * Math.pow(overflow, 1.21)
          * Math.exp(0.063 * sandPercent)
          / (Math.pow(underflow, 0.71) * Math.pow(vortex, 0.38) * Math.pow(flow, 0.45));
    }

    double pressureOfGeometryAndSand() {
      return Math.exp(0.0055 * sandPercent)
          / (Math.pow(body, 0.37)
              * Math.pow(inlet, 0.94)
              * Math.pow(vortex, 0.28)
              * Math.pow(openings, 0.87));
    }

    /** Keeps the steps of the cut size [um] and the pressure [kPa]. */
    void steps(Equation cutSize, Equation pressureDrop, double cut, double pressure) {
      trace.step(
          cutSize,
          cut / InUnit.MICROMETRE.of(1),
          geometry.bodyM(),
          geometry.inletM(),
          geometry.overflowM(),
          geometry.underflowM(),
          geometry.freeVortexM(),
          feed.flowM3ps(),
          feed.volumeFraction(),
          feed.sandDensityKgM3(),
          feed.liquid().densityKgM3());
      trace.step(
          pressureDrop,
          pressure / InUnit.KILOPASCAL.of(1),
          feed.flowM3ps(),
          feed.volumeFraction(),
          geometry.bodyM(),
          geometry.inletM(),
          geometry.freeVortexM(),
          geometry.underflowM(),
          geometry.overflowM());
    }

    List<Bound.Excess> excesses(CycloneFeed feed) {
      List<Bound.Excess> excesses = new ArrayList<>();
      BODY.check(body / InUnit.CENTIMETRE.of(1)).ifPresent(excesses::add);
      SAND.check(feed.volumeFraction()).ifPresent(excesses::add);
      return excesses;
    }

    CyclonePerformance performance(
        double cutMicrometres,
        double pressureKilopascals,
        CycloneFeed feed,
        List<Bound.Excess> excesses) {
      double pressurePa = pressureKilopascals / InUnit.KILOPASCAL.of(1);
      double headM = pressurePa / (feed.mixtureDensityKgM3() * Physics.GRAVITY);
      double split =
          1.9
              * Math.pow(underflow / overflow, 3.31)
              * Math.pow(vortex, 0.54)
              * Math.pow(openings, 0.36)
              * Math.exp(0.0054 * sandPercent)
              / (Math.pow(body, 1.11) * Math.pow(headM, 0.24));
      double share = split / (1 + split);
      double sharpness =
          1.94 * Math.exp(-1.58 * share) * Math.pow(body * body * vortex / flow, 0.15);
      trace.step(HEAD, headM, pressurePa, feed.mixtureDensityKgM3());
      trace.step(
          SPLIT,
          split,
          geometry.underflowM(),
          geometry.overflowM(),
          geometry.freeVortexM(),
          feed.volumeFraction(),
          geometry.bodyM(),
          headM);
      trace.step(BELOW, share, split);
      trace.step(
          SHARPNESS, sharpness, share, geometry.bodyM(), geometry.freeVortexM(), feed.flowM3ps());
      return new CyclonePerformance(
          cutMicrometres / InUnit.MICROMETRE.of(1), pressurePa, share, sharpness, excesses);
    }
  }

  static List<Bound> commonRange() {
    return List.of(BODY, SAND);
  }
}
