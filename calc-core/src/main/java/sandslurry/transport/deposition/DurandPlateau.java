package sandslurry.transport.deposition;

import sandslurry.correlation.Citation;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;
import sandslurry.units.Kind;

/**
 * Durand's deposition velocity for coarse sand, where his curve of F_L ends in a plateau.
 *
 * <pre>V = F √(2 g D (s − 1))</pre>
 *
 * <p>V deposition velocity [m/s]; F 1.05 in the French papers and 1.34 in the English print; g
 * gravity [m/s²]; D bore [m]; s density of sand over density of carrier. F_L climbs to this value
 * as the sand becomes coarse, so for fine sand the plateau is on the safe side. Range and meaning
 * are those of {@link Durand1953}.
 *
 * <p>The English print of 1953 is the figure that many handbooks copy. It lies about 1.3 times
 * above the French papers on the same measurements, which later reviews take for an error of the
 * drawing and 1.05 for what was measured; it is kept so that a reader who knows it finds it.
 */
final class DurandPlateau extends DepositionVelocityModel {
  /** The plateau of the French papers. */
  public static final DurandPlateau FRENCH =
      new DurandPlateau(
          1.05,
          "durand-plateau-french",
          "Durand, plateau of the French papers",
          new Citation(
                  "Durand and Condolios",
                  1952,
                  "Deuxième Journée de l'Hydraulique, Société Hydrotechnique de France, Grenoble")
              .fromMemory("plateau"));

  /** The plateau of the English print. */
  public static final DurandPlateau ENGLISH =
      new DurandPlateau(
          1.34,
          "durand-plateau-english",
          "Durand, plateau of the English print",
          new Citation(
                  "Durand",
                  1953,
                  "Proceedings of the Minnesota International Hydraulics Convention, 89-103")
              .fromMemory("plateau"));

  private final double factor;
  private final Equation equation;

  private DurandPlateau(double factor, String id, String name, Citation citation) {
    this(
        factor,
        id,
        name,
        citation,
        citation.equation(
            "V",
            "deposition velocity by Durand",
            factor + " sqrt(2 g D (s - 1))",
            Kind.VELOCITY,
            "D m, s"));
  }

  private DurandPlateau(
      double factor, String id, String name, Citation citation, Equation equation) {
    super(id, name, Limit.ANY_BED, citation, Durand1953.WITHIN, equation);
    this.factor = factor;
    this.equation = equation;
  }

  @Override
  double valueMps(Slurry slurry, Bore bore, Trace trace) {
    double velocity = factor * VelocityScale.durandMps(slurry, bore);
    return trace.step(equation, velocity, bore.diameterM(), slurry.densityRatio());
  }
}
