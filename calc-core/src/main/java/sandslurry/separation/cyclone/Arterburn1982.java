package sandslurry.separation.cyclone;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Published;
import sandslurry.separation.Numbers;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/**
 * Cut size of a hydrocyclone of usual proportions by the selection rule of Arterburn.
 *
 * <pre>d50c = 2.84 D^0.66 · ((53 − C)/53)^(−1.43) · 3.27 Δp^(−0.28) · (1.65/(Gs − GL))^0.5</pre>
 *
 * <p>d50c cut size [µm]; D diameter of the cyclone [cm]; C sand in per cent by volume; Δp pressure
 * drop [kPa]; Gs, GL densities of sand and liquor [g/cm³]. The three factors are 1 at the
 * conditions of the rule: dilute, 69 kPa, quartz. There is no viscosity in it. At 53 % sand it has
 * no value: from 50 % on the value of 50 % is given and reported as outside.
 *
 * <p>Source: Arterburn (1982), The sizing and selection of hydrocyclones, in Mular and Jergensen,
 * Design and Installation of Comminution Circuits, AIME. The coefficients were read, solved for the
 * diameter, in the documentation of a public set of mineral-processing spreadsheet functions
 * (Dr-Alireza-Ghasemi/mineral-processing-functions, CYCLONE.SIZE); that the practical cuts run from
 * 40 to 400 µm at scribd.com/document/484134904.
 */
public final class Arterburn1982 extends Published implements CutSizeModel {
  private static final Bound CUT = new Bound("cut size", Kind.GRAIN, 40e-6, 400e-6);
  private static final Bound SAND = new Bound("volume fraction of sand", Kind.PERCENT, 0, 0.50);

  /** Creates the rule; it has no state. */
  public Arterburn1982() {
    super(
        "arterburn-1982",
        "Arterburn",
        "d50c = 2.84 D^0.66 ((53 - C)/53)^-1.43 * 3.27 dp^-0.28 (1.65/(Gs - GL))^0.5",
        new Citation(
            "Arterburn",
            1982,
            "in Mular and Jergensen, Design and Installation of Comminution Circuits, AIME;"
                + " coefficients seen in a public set of spreadsheet functions"),
        List.of(CUT, SAND, Plitt1976.WATER_VISCOSITY));
  }

  @Override
  public Estimate cutSizeM(double bodyM, CycloneFeed feed, double pressureDropPa) {
    Numbers.positive("the diameter of the cyclone", bodyM, "m");
    Numbers.positive("the pressure drop", pressureDropPa, "Pa");
    double percent = InUnit.PERCENT.of(Math.min(feed.volumeFraction(), SAND.high()));
    double difference =
        InUnit.GRAM_PER_CUBIC_CENTIMETRE.of(feed.sandDensityKgM3() - feed.liquid().densityKgM3());
    double micrometres =
        2.84
            * Math.pow(InUnit.CENTIMETRE.of(bodyM), 0.66)
            * Math.pow((53 - percent) / 53, -1.43)
            * 3.27
            * Math.pow(InUnit.KILOPASCAL.of(pressureDropPa), -0.28)
            * Math.sqrt(1.65 / difference);
    double cut = micrometres / InUnit.MICROMETRE.of(1);
    return Estimate.checks()
        .check(CUT, cut)
        .check(SAND, feed.volumeFraction())
        .check(Plitt1976.WATER_VISCOSITY, feed.liquid().viscosityPaS())
        .value(cut);
  }
}
