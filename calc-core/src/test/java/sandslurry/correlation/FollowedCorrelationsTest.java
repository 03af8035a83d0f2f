package sandslurry.correlation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import java.util.function.Function;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.fact.step.Followed;
import sandslurry.fact.step.Step;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;
import sandslurry.pipe.Bore;
import sandslurry.plant.pen.ManureProductions;
import sandslurry.pump.derating.SolidsDeratings;
import sandslurry.separation.channel.Merritt2009;
import sandslurry.separation.channel.ScourModels;
import sandslurry.separation.cyclone.CycloneFeed;
import sandslurry.separation.cyclone.HydrocycloneGeometry;
import sandslurry.separation.cyclone.HydrocycloneModels;
import sandslurry.settling.HinderedSettlings;
import sandslurry.settling.SettlingVelocities;
import sandslurry.transport.deposition.DepositionVelocities;
import sandslurry.transport.headloss.HeadLosses;

/** Every correlation computes what its printed equations say. */
class FollowedCorrelationsTest {
  private static void follow(Correlation model, Function<Trace, Estimate> evaluation) {
    Trace trace = Trace.recording();
    double value = evaluation.apply(trace).value();
    Followed.all(trace.steps());
    assertThat(trace.steps()).as(model.name()).extracting(Step::value).contains(value);
    // The page of the correlations prints the same equations.
    assertThat(trace.steps()).anyMatch(s -> model.about().equation().contains(s.equation().text()));
  }

  private static Slurry slurry(double size, double wide, double viscosity, double fraction) {
    return new Slurry(
        new Liquid(1010, viscosity), 2650, GrainShape.NATURAL, size, wide * size, fraction);
  }

  @Property(tries = 300)
  void ofSettling(
      @ForAll @DoubleRange(min = 1e-5, max = 1e-2) @Scale(8) double size,
      @ForAll @DoubleRange(min = 3e-4, max = 1) @Scale(8) double viscosity,
      @ForAll boolean sphere) {
    Grain grain = new Grain(size, 2650, sphere ? GrainShape.SPHERE : GrainShape.NATURAL);
    Liquid liquid = new Liquid(1010, viscosity);
    SettlingVelocities.FAMILY
        .all()
        .forEach(m -> follow(m, trace -> m.velocityMps(grain, liquid, trace)));
  }

  @Property(tries = 300)
  void ofHinderedSettling(
      @ForAll @DoubleRange(min = 0, max = 1e4) double reynolds,
      @ForAll @DoubleRange(min = 0, max = 0.5) double fraction) {
    HinderedSettlings.FAMILY
        .all()
        .forEach(m -> follow(m, trace -> m.exponent(reynolds, fraction, trace)));
  }

  @Property(tries = 300)
  void ofDeposition(
      @ForAll @DoubleRange(min = 5e-5, max = 1e-2) @Scale(8) double size,
      @ForAll @DoubleRange(min = 3e-4, max = 0.1) @Scale(8) double viscosity,
      @ForAll @DoubleRange(min = 1e-4, max = 0.4) @Scale(8) double fraction,
      @ForAll @DoubleRange(min = 0.03, max = 0.8) @Scale(8) double bore) {
    Slurry slurry = slurry(size, 1, viscosity, fraction);
    Bore pipe = new Bore(bore, 5e-5);
    DepositionVelocities.FAMILY
        .all()
        .forEach(m -> follow(m, trace -> m.velocityMps(slurry, pipe, trace)));
  }

  @Property(tries = 300)
  void ofHeadLoss(
      @ForAll @DoubleRange(min = 5e-5, max = 5e-3) @Scale(8) double size,
      @ForAll @DoubleRange(min = 1, max = 5) double wide,
      @ForAll @DoubleRange(min = 3e-4, max = 0.02) @Scale(8) double viscosity,
      @ForAll @DoubleRange(min = 1e-3, max = 0.4) @Scale(8) double fraction,
      @ForAll @DoubleRange(min = 0.3, max = 6) double velocity) {
    Slurry slurry = slurry(size, wide, viscosity, fraction);
    Bore pipe = new Bore(0.15, 5e-5);
    HeadLosses.FAMILY
        .all()
        .forEach(m -> follow(m, trace -> m.gradient(slurry, pipe, velocity, trace)));
  }

  @Property(tries = 300)
  void ofDerating(
      @ForAll @DoubleRange(min = 1e-5, max = 5e-3) @Scale(8) double size,
      @ForAll @DoubleRange(min = 1e-3, max = 0.4) @Scale(8) double fraction) {
    Slurry slurry = slurry(size, 1, 1e-3, fraction);
    SolidsDeratings.FAMILY
        .all()
        .forEach(m -> follow(m, trace -> m.headRatio(slurry, OptionalDouble.of(0.35), trace)));
  }

  @Property(tries = 300)
  void ofScour(
      @ForAll @DoubleRange(min = 1e-5, max = 1e-2) @Scale(8) double size,
      @ForAll @DoubleRange(min = 3e-4, max = 0.1) @Scale(8) double viscosity) {
    Grain grain = new Grain(size, 2650, GrainShape.NATURAL);
    Trace trace = Trace.recording();
    ScourModels.SHIELDS.shieldsNumber(grain, new Liquid(1010, viscosity), trace);
    new Merritt2009().neededStressPa(size, trace);
    Followed.all(trace.steps());
  }

  @Property(tries = 300)
  void ofHydrocyclones(
      @ForAll @DoubleRange(min = 3e-4, max = 0.01) @Scale(8) double viscosity,
      @ForAll @DoubleRange(min = 1e-3, max = 0.3) @Scale(8) double fraction,
      @ForAll @DoubleRange(min = 1e-3, max = 0.05) @Scale(8) double flow) {
    HydrocycloneGeometry geometry = new HydrocycloneGeometry(0.25, 0.07, 0.085, 0.05, 1.1);
    CycloneFeed feed = new CycloneFeed(flow, new Liquid(1010, viscosity), fraction, 2650);
    HydrocycloneModels.FAMILY
        .all()
        .forEach(
            m ->
                follow(
                    m,
                    trace ->
                        Estimate.checks().value(m.performance(geometry, feed, trace).cutSizeM())));
  }

  @Property(tries = 100)
  void ofManure(@ForAll @DoubleRange(min = 1e-5, max = 1e-3) @Scale(8) double milk) {
    ManureProductions.FAMILY.all().forEach(m -> follow(m, trace -> m.manureKgps(milk, trace)));
  }
}
