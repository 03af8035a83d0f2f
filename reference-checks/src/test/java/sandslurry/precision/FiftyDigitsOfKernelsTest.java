package sandslurry.precision;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.outside.Ours.ours;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import sandslurry.correlation.Correlation;
import sandslurry.correlation.Family;
import sandslurry.material.Slurry;
import sandslurry.material.Thomas1965;
import sandslurry.material.liquid.Bingham;
import sandslurry.material.liquid.HerschelBulkley;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.liquid.PowerLaw;
import sandslurry.material.liquid.Rheology;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;
import sandslurry.pipe.Bore;
import sandslurry.pipe.surge.Joukowsky1898;
import sandslurry.plant.pen.ManureProductions;
import sandslurry.pump.derating.HydraulicInstituteViscous;
import sandslurry.pump.rotodynamic.BestPoint;
import sandslurry.pump.rotodynamic.ViscousCorrection;
import sandslurry.separation.capture.BasinFlow;
import sandslurry.separation.capture.CampDobbins1946;
import sandslurry.separation.capture.CaptureRelation;
import sandslurry.separation.capture.CaptureRelations;
import sandslurry.separation.capture.HazenBasins;
import sandslurry.separation.channel.CampScour1946;
import sandslurry.separation.channel.Merritt2009;
import sandslurry.separation.channel.ScourModel;
import sandslurry.separation.channel.ScourModels;
import sandslurry.separation.cyclone.CycloneFeed;
import sandslurry.separation.cyclone.CyclonePerformance;
import sandslurry.separation.cyclone.HydrocycloneGeometry;
import sandslurry.separation.cyclone.HydrocycloneModels;
import sandslurry.separation.pit.Impeller;
import sandslurry.separation.pit.Zwietering1958;
import sandslurry.settling.SettlingVelocities;
import sandslurry.transport.friction.NonNewtonianModels;
import sandslurry.transport.headloss.HeadLosses;
import sandslurry.units.InUnit;

/**
 * Kernels of all families that {@link FiftyDigitsTest} leaves against their equations with 50
 * digits. Formulas must agree to 1e-12; roots to the 1e-9 to which they are solved.
 */
class FiftyDigitsOfKernelsTest {
  private static final List<String> SOLVED =
      List.of(
          "haider-levenspiel-1989",
          "ryan-johnson-1959",
          "dodge-metzner-1959",
          "darby-melson-1981",
          "wilson-thomas-1985");

  private static final double SAND = 2650;
  private static final double WATER = 1000;
  private static final double STEEL_M = 4.5e-5;

  /** By the id, each of the inputs in the order written beside it. */
  private static final Map<String, ToDoubleFunction<double[]>> KERNELS =
      Map.ofEntries(
          // Grain [m], its density, density and viscosity of the liquid.
          entry("dietrich-1982", x -> fall("dietrich-1982", x)),
          entry("haider-levenspiel-1989", x -> fall("haider-levenspiel-1989", x)),
          // Grain [m], bore [m], sand by volume, its density, density, viscosity, velocity [m/s].
          entry("newitt-1955", x -> gradient("newitt-1955", x)),
          entry("turian-yuan-1977", x -> gradient("turian-yuan-1977", x)),
          // Body, inlet, vortex finder, apex, free vortex [m], flow, sand by volume, viscosity.
          entry("plitt-1976 cut", x -> cyclone("plitt-1976", x).cutSizeM()),
          entry("plitt-1976 pressure", x -> cyclone("plitt-1976", x).pressureDropPa()),
          entry("plitt-1976 below", x -> cyclone("plitt-1976", x).underflowShare()),
          entry("plitt-1976 sharpness", x -> cyclone("plitt-1976", x).sharpness()),
          entry("flintoff-plitt-turak-1987 cut", x -> later(x).cutSizeM()),
          entry("flintoff-plitt-turak-1987 pressure", x -> later(x).pressureDropPa()),
          entry("flintoff-plitt-turak-1987 below", x -> later(x).underflowShare()),
          entry("flintoff-plitt-turak-1987 sharpness", x -> later(x).sharpness()),
          // Body [m], sand by volume, pressure drop [Pa]; body [m], flow, viscosity.
          entry("arterburn-1982", x -> rule("arterburn-1982", x[0], 0.01, x[1], 1e-3, x[2])),
          entry("bradley-1965", x -> rule("bradley-1965", x[0], x[1], 0, x[2], 1e5)),
          // Overflow rate, shear velocity, settling velocity [m/s]; fall number, weight number.
          entry("hazen-ideal-1904", x -> captured(CaptureRelations.IDEAL, x)),
          entry("vetter-1940", x -> captured(CaptureRelations.MIXED, x)),
          entry("hazen-basins 0.17", x -> captured(HazenBasins.ofReciprocal(0.17), x)),
          entry("hazen-basins 0.5", x -> captured(HazenBasins.ofReciprocal(0.5), x)),
          entry("camp-dobbins-1946", x -> CampDobbins1946.fraction(x[0], x[1])),
          // Grain [m], its density, density and viscosity of the liquid, Darcy friction factor.
          entry("camp-scour 0.04", x -> scour(new CampScour1946(0.04), x)),
          entry("camp-scour 0.06", x -> scour(new CampScour1946(0.06), x)),
          entry("shields-soulsby-1997", x -> scour(ScourModels.SHIELDS, x)),
          // Yield stress [Pa], consistency, index where there is one, density, bore, velocity.
          entry("ryan-johnson-1959", x -> endOfLaminar("ryan-johnson-1959", x)),
          entry("slatter-wasp-2000", x -> endOfLaminar("slatter-wasp-2000", x)),
          entry("dodge-metzner-1959", FiftyDigitsOfKernelsTest::dodgeMetzner),
          entry("darby-melson-1981", FiftyDigitsOfKernelsTest::darbyMelson),
          entry("wilson-thomas-1985", FiftyDigitsOfKernelsTest::wilsonThomas),
          // Best flow, head, speed, kinematic viscosity.
          entry("hydraulic-institute B", x -> viscous(x).b()),
          entry("hydraulic-institute flow", x -> viscous(x).flowRatio()),
          entry("hydraulic-institute efficiency", x -> viscous(x).efficiencyRatio()),
          // Fines by volume; grain [m]; milk [kg/d]; density, moduli, bore and wall; S, impeller,
          // grain, density, viscosity, sand by mass of liquor.
          entry("thomas-1965", x -> new Thomas1965().relativeViscosity(x[0]).value()),
          entry("merritt-2009", x -> new Merritt2009().neededStressPa(x[0]).value()),
          entry("nennich-2005", x -> manure("nennich-2005", x[0])),
          entry("asabe-d384", x -> manure("asabe-d384", x[0])),
          entry("joukowsky-1898", FiftyDigitsOfKernelsTest::wave),
          entry("zwietering-1958", FiftyDigitsOfKernelsTest::suspended));

  private static <M extends Correlation> M named(Family<M> family, String id) {
    return family.all().stream().filter(model -> model.id().equals(id)).findFirst().orElseThrow();
  }

  private static double fall(String id, double[] x) {
    return named(SettlingVelocities.FAMILY, id)
        .velocityMps(new Grain(x[0], x[1], GrainShape.NATURAL), new Liquid(x[2], x[3]))
        .value();
  }

  private static double gradient(String id, double[] x) {
    Slurry slurry = new Slurry(new Liquid(x[4], x[5]), x[3], GrainShape.NATURAL, x[0], x[0], x[2]);
    return named(HeadLosses.FAMILY, id).gradient(slurry, new Bore(x[1], STEEL_M), x[6]).value();
  }

  private static CyclonePerformance later(double[] x) {
    return cyclone("flintoff-plitt-turak-1987", x);
  }

  private static CyclonePerformance cyclone(String id, double[] x) {
    return named(HydrocycloneModels.FAMILY, id)
        .performance(
            new HydrocycloneGeometry(x[0], x[1], x[2], x[3], x[4]),
            new CycloneFeed(x[5], new Liquid(WATER, x[7]), x[6], SAND));
  }

  private static double rule(
      String id, double body, double flow, double sand, double viscosity, double pressure) {
    CycloneFeed feed = new CycloneFeed(flow, new Liquid(WATER, viscosity), sand, SAND);
    return named(HydrocycloneModels.RULES, id).cutSizeM(body, feed, pressure).value();
  }

  private static double captured(CaptureRelation relation, double[] x) {
    return relation.fraction(new BasinFlow(x[0], x[1]), x[2]).value();
  }

  private static double scour(ScourModel model, double[] x) {
    Grain grain = new Grain(x[0], x[1], GrainShape.NATURAL);
    return model.velocityMps(grain, new Liquid(x[2], x[3]), x[4]).value();
  }

  private static Rheology rheology(double yieldPa, double consistency, double index) {
    return yieldPa > 0
        ? new HerschelBulkley(yieldPa, consistency, index)
        : new PowerLaw(consistency, index);
  }

  private static double endOfLaminar(String id, double[] x) {
    return named(NonNewtonianModels.TRANSITIONS, id)
        .velocityMps(rheology(x[0], x[1], x[2]), x[3], new Bore(x[4], 0))
        .value();
  }

  private static double turbulent(String id, Rheology rheology, double... x) {
    return named(NonNewtonianModels.TURBULENT, id)
        .wallStressPa(rheology, x[0], new Bore(x[1], x[3]), x[2])
        .value();
  }

  private static double dodgeMetzner(double[] x) {
    return turbulent("dodge-metzner-1959", new PowerLaw(x[0], x[1]), x[2], x[3], x[4], 0);
  }

  private static double darbyMelson(double[] x) {
    return turbulent("darby-melson-1981", new Bingham(x[0], x[1]), x[2], x[3], x[4], 0);
  }

  private static double wilsonThomas(double[] x) {
    Rheology liquid = rheology(x[0], x[1], x[2]);
    return turbulent("wilson-thomas-1985", liquid, x[3], x[4], x[5], STEEL_M);
  }

  private static ViscousCorrection viscous(double[] x) {
    return new HydraulicInstituteViscous().correction(new BestPoint(x[0], x[1], x[2]), x[3]);
  }

  private static double manure(String id, double milkKgPerDay) {
    double milk = InUnit.KILOGRAM_PER_DAY.si(milkKgPerDay);
    return InUnit.KILOGRAM_PER_DAY.of(named(ManureProductions.FAMILY, id).manureKgps(milk).value());
  }

  private static double wave(double[] x) {
    return new Joukowsky1898().waveSpeedMps(x[0], x[1], x[2], x[3], x[4]);
  }

  private static double suspended(double[] x) {
    Impeller impeller = new Impeller(x[1], x[0], 1);
    return new Zwietering1958()
        .speedRps(impeller, x[2], new Liquid(x[3], x[4]), SAND, x[5])
        .value();
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/fifty-digits/kernels.csv")
  void kernel(String id, String inputs, double exact) {
    double[] x = Arrays.stream(inputs.split(" ")).mapToDouble(Double::parseDouble).toArray();
    double relative = SOLVED.contains(id) ? 1e-9 : 1e-12;
    assertThat(KERNELS).containsKey(id);
    ours(KERNELS.get(id).applyAsDouble(x)).as(id).isCloseTo(exact, within(relative * exact));
  }
}
