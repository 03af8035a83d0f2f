package sandslurry.precision;

import static org.assertj.core.api.Assertions.within;
import static sandslurry.outside.Ours.ours;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import sandslurry.correlation.Correlation;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;
import sandslurry.pipe.Bore;
import sandslurry.pump.derating.SolidsDeratings;
import sandslurry.separation.cyclone.CycloneFeed;
import sandslurry.separation.cyclone.CyclonePerformance;
import sandslurry.separation.cyclone.HydrocycloneGeometry;
import sandslurry.separation.cyclone.MedronhoSvarovsky1984;
import sandslurry.settling.HinderedSettlings;
import sandslurry.settling.SettlingVelocities;
import sandslurry.transport.deposition.DepositionVelocities;
import sandslurry.transport.friction.PipeFriction;
import sandslurry.transport.headloss.HeadLosses;

/**
 * Every kernel against its own equation with 50 digits, at inputs drawn at random within its range.
 * The files say how their values were made. Formulas must agree to 1e-12; roots to the 1e-9 to
 * which they are solved. A changed constant or exponent fails here.
 */
class FiftyDigitsTest {
  private static final double FORMULA = 1e-12;
  private static final double ROOT = 1e-9;
  private static final List<String> SOLVED =
      List.of(
          "wilson-bounded",
          "wasp-kenny-gandhi-1977",
          "schiller-naumann-1933",
          "turton-levenspiel-1986");
  private static final double COMMERCIAL_STEEL_M = 4.5e-5;

  private static <M extends Correlation> M named(List<M> family, String id) {
    return family.stream().filter(model -> model.id().equals(id)).findFirst().orElseThrow();
  }

  private static void agree(String id, double ours, double exact) {
    double relative = SOLVED.contains(id) ? ROOT : FORMULA;
    ours(ours).as(id).isCloseTo(exact, within(relative * Math.abs(exact)));
  }

  private static Slurry slurry(double d, double c, double sand, double density, double viscosity) {
    return new Slurry(new Liquid(density, viscosity), sand, GrainShape.NATURAL, d, d, c);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/fifty-digits/deposition-velocity.csv")
  void depositionVelocity(
      String id, double d, double bore, double c, double sand, double rho, double mu, double v) {
    agree(
        id,
        named(DepositionVelocities.FAMILY.all(), id)
            .velocityMps(slurry(d, c, sand, rho, mu), new Bore(bore, COMMERCIAL_STEEL_M))
            .value(),
        v);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/fifty-digits/head-loss.csv")
  void headLoss(
      String id,
      double d,
      double bore,
      double c,
      double sand,
      double rho,
      double mu,
      double velocity,
      double gradient) {
    agree(
        id,
        named(HeadLosses.FAMILY.all(), id)
            .gradient(slurry(d, c, sand, rho, mu), new Bore(bore, COMMERCIAL_STEEL_M), velocity)
            .value(),
        gradient);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/fifty-digits/settling-velocity.csv")
  void settlingVelocity(String id, double d, double sand, double rho, double mu, double w) {
    // The laws of spheres are asked for spheres.
    GrainShape shape =
        id.contains("schiller") || id.contains("turton") ? GrainShape.SPHERE : GrainShape.NATURAL;
    agree(
        id,
        named(SettlingVelocities.FAMILY.all(), id)
            .velocityMps(new Grain(d, sand, shape), new Liquid(rho, mu))
            .value(),
        w);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/fifty-digits/hindered-settling.csv")
  void hinderedSettling(String id, double reynolds, double exponent) {
    agree(id, named(HinderedSettlings.FAMILY.all(), id).exponent(reynolds, 0.1).value(), exponent);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/fifty-digits/pump-derating.csv")
  void pumpDerating(
      String id,
      double d,
      double c,
      double sand,
      double rho,
      double mu,
      double impeller,
      double ratio) {
    agree(
        id,
        named(SolidsDeratings.FAMILY.all(), id)
            .headRatio(slurry(d, c, sand, rho, mu), OptionalDouble.of(impeller))
            .value(),
        ratio);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/fifty-digits/darcy-factor.csv")
  void darcyFactor(double reynolds, double roughness, double factor) {
    agree("churchill-1977", PipeFriction.darcyFactor(reynolds, roughness), factor);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/fifty-digits/medronho-svarovsky.csv")
  void cyclone(
      double body,
      double apex,
      double flow,
      double c,
      double mu,
      double cut,
      double drop,
      double water) {
    CyclonePerformance ours =
        new MedronhoSvarovsky1984()
            .performance(
                new HydrocycloneGeometry(body, 0.28 * body, 0.34 * body, apex, 4.6 * body),
                new CycloneFeed(flow, new Liquid(1000, mu), c, 2650));
    agree("cut size", ours.cutSizeM(), cut);
    agree("pressure drop", ours.pressureDropPa(), drop);
    agree("water", ours.underflowShare(), water);
  }
}
