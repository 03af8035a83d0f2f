package sandslurry.separation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainRange;
import sandslurry.material.sand.GrainShape;
import sandslurry.separation.box.BoxResult;
import sandslurry.separation.box.BoxSand;
import sandslurry.separation.box.DilutionBox;
import sandslurry.separation.capture.Outlook;
import sandslurry.separation.channel.OpenChannel;
import sandslurry.separation.cyclone.CutSizeModel;
import sandslurry.separation.cyclone.CycloneResult;
import sandslurry.separation.cyclone.Hydrocyclone;
import sandslurry.separation.cyclone.HydrocycloneGeometry;
import sandslurry.separation.cyclone.HydrocycloneModel;
import sandslurry.separation.cyclone.HydrocycloneModels;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.separation.lane.LaneReach;
import sandslurry.separation.lane.LaneTrade;
import sandslurry.separation.pit.Impeller;
import sandslurry.separation.pit.PitMixing;
import sandslurry.separation.screen.CakeSeparator;

class SeparationUnitsProperties {
  private static final List<Double> SIZES = List.of(0.08e-3, 0.15e-3, 0.3e-3, 0.6e-3, 1.2e-3);

  @Provide
  Arbitrary<UnitFeed> feeds() {
    Arbitrary<Double> flow =
        Arbitraries.doubles().between(-4, -0.5).map(power -> Math.pow(10, power));
    Arbitrary<Double> viscosity =
        Arbitraries.doubles().between(-3.1, -0.5).map(power -> Math.pow(10, power));
    Arbitrary<Double> fines = Arbitraries.doubles().between(0, 0.08);
    Arbitrary<Double> dissolved = Arbitraries.doubles().between(0, 0.04);
    Arbitrary<Double> fibre = Arbitraries.doubles().between(0, 0.06);
    Arbitrary<List<Double>> sand =
        Arbitraries.oneOf(Arbitraries.just(0.0), Arbitraries.doubles().between(0, 150))
            .list()
            .ofSize(SIZES.size());
    Arbitrary<Double> coating = Arbitraries.doubles().between(0.6, 1);
    return Combinators.combine(flow, viscosity, fines, dissolved, fibre, sand, coating)
        .as(
            (q, mu, x, d, f, loads, k) ->
                new UnitFeed(
                    q,
                    new Liquid(1010, mu),
                    x,
                    d,
                    f * q * 1010,
                    2650,
                    GrainShape.NATURAL,
                    SIZES.stream().map(size -> new GrainRange(size, size)).toList(),
                    loads.stream().map(load -> load * q).toList(),
                    k,
                    0));
  }

  private static void allFinite(double... values) {
    for (double value : values) {
      assertThat(value).isFinite().isGreaterThanOrEqualTo(0);
    }
  }

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
  void boxWithTheAskedMoistureKeepsItsBalance(
      @ForAll("feeds") UnitFeed feed,
      @ForAll @DoubleRange(min = 0.5, max = 50) double area,
      @ForAll @DoubleRange(min = 0, max = 0.4) double moisture,
      @ForAll @DoubleRange(min = 0, max = 3) double rinse) {
    DilutionBox box =
        new DilutionBox(area, 1, 0.8, moisture, rinse, 0.5, OptionalDouble.of(1e-3), 0.4);
    BoxResult result = box.evaluate(feed, OrganicMatter.FEEDLOT);
    allFinite(result.overflowVelocityMps(), result.residenceTimeS(), result.rinseM3ps());
    for (int i = 0; i < 3; i++) {
      BoxSand sand = result.sands().get(i);
      allFinite(sand.sandKgps(), sand.foreignMatter(), sand.bulkM3ps());
      allFinite(sand.screwLoad().getAsDouble());
      assertThat(sand.sandKgps())
          .isEqualTo(
              feed.sandKgps(sand.partition().sand()), within(1e-12 * (1 + feed.sandTotalKgps())));
      // Water that leaves, of feed and rinse together, over all that leaves.
      double solids = feed.liquorSolids() * feed.liquidKgps();
      double water =
          sand.partition().water()
              * (feed.liquidKgps() - solids + result.rinseM3ps() * feed.liquid().densityKgM3());
      double dry =
          sand.sandKgps()
              + sand.partition().fibre() * feed.fibreKgps()
              + sand.partition().fines() * solids;
      if (dry > 0 && sand.partition().water() < 1) {
        assertThat(water / (water + dry)).isEqualTo(moisture, within(1e-9));
        assertThat(sand.moisture()).isEqualTo(moisture, within(1e-9));
      }
      assertThat(sand.foreignMatter()).isLessThanOrEqualTo(1);
      if (i > 0) {
        assertThat(sand.sandKgps())
            .isGreaterThanOrEqualTo(result.sands().get(i - 1).sandKgps() * (1 - 1e-12));
      }
    }
    // A coarser class is never caught less, a bigger box never catches less.
    List<Double> likely = result.sand(Outlook.LIKELY).partition().sand();
    for (int i = 1; i < likely.size(); i++) {
      assertThat(likely.get(i)).isGreaterThanOrEqualTo(likely.get(i - 1));
    }
    DilutionBox bigger =
        new DilutionBox(2 * area, 1, 0.8, moisture, rinse, 0.5, OptionalDouble.empty(), 0.4);
    assertThat(bigger.evaluate(feed, OrganicMatter.FEEDLOT).sand(Outlook.LIKELY).sandKgps())
        .isGreaterThanOrEqualTo(result.sand(Outlook.LIKELY).sandKgps() * (1 - 1e-12));
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void rinsingLeavesLessLiquorMatterInTheSand(
      @ForAll("feeds") UnitFeed feed, @ForAll @DoubleRange(min = 0.1, max = 3) double rinse) {
    double before =
        new DilutionBox(5, 1, 1, 0.2, 0, 0.5, OptionalDouble.empty(), 0.4)
            .evaluate(feed, OrganicMatter.FEEDLOT)
            .sand(Outlook.HOPEFUL)
            .partition()
            .fines();
    double after =
        new DilutionBox(5, 1, 1, 0.2, rinse, 0.5, OptionalDouble.empty(), 0.4)
            .evaluate(feed, OrganicMatter.FEEDLOT)
            .sand(Outlook.HOPEFUL)
            .partition()
            .fines();
    assertThat(after).isLessThanOrEqualTo(before * Math.pow(0.5, rinse) * (1 + 1e-12));
  }

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
  void cycloneBalancesVolumeWithTheModelsSplit(
      @ForAll("feeds") UnitFeed feed,
      @ForAll @DoubleRange(min = 0.05, max = 0.5) double body,
      @ForAll @DoubleRange(min = 0.05, max = 0.3) double apex,
      @ForAll @DoubleRange(min = 1, max = 8) double number) {
    Hydrocyclone cyclone =
        new Hydrocyclone(HydrocycloneGeometry.rietema(body, apex * body), (int) number);
    for (HydrocycloneModel model : HydrocycloneModels.FAMILY.all()) {
      CycloneResult result = cyclone.evaluate(feed, model);
      allFinite(
          result.performance().cutSizeM(),
          result.performance().pressureDropPa(),
          result.headM(),
          result.hydraulicPowerW(),
          result.overflowSand(),
          result.underflowMedianM(),
          result.ropingLimit());
      double below =
          feed.liquidM3ps() * result.partition().water()
              + feed.sandKgps(result.partition().sand()) / feed.sandDensityKgM3();
      assertThat(below / feed.mixtureM3ps())
          .isEqualTo(result.performance().underflowShare(), within(1e-9));
      assertThat(result.underflowSand()).isBetween(0.0, 0.6 + 1e-9);
      List<Double> sand = result.partition().sand();
      double follow = result.partition().water();
      for (int i = 0; i < sand.size() && !result.packed(); i++) {
        double sorted = result.performance().correctedPartition(SIZES.get(i));
        assertThat(sand.get(i)).isEqualTo(follow + (1 - follow) * sorted, within(1e-9));
      }
      for (int i = 1; i < sand.size(); i++) {
        assertThat(sand.get(i)).isGreaterThanOrEqualTo(sand.get(i - 1) - 1e-12);
      }
      for (CutSizeModel rule : HydrocycloneModels.RULES.all()) {
        allFinite(
            rule.cutSizeM(body, result.feed(), result.performance().pressureDropPa()).value());
      }
    }
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void cakeIsAsDryAsAskedOrTheWholeFeedGoesIn(
      @ForAll("feeds") UnitFeed feed,
      @ForAll @DoubleRange(min = 0, max = 1) double fibre,
      @ForAll @DoubleRange(min = 0, max = 1) double fines,
      @ForAll @DoubleRange(min = 0.05, max = 1) double solids,
      @ForAll boolean screened) {
    CakeSeparator separator =
        new CakeSeparator(
            screened ? OptionalDouble.of(0.5e-3) : OptionalDouble.empty(), fibre, fines, solids);
    CakeSeparator.CakeResult result = separator.evaluate(feed);
    Partition split = result.partition();
    double liquor = feed.liquidKgps();
    double water = liquor * (1 - feed.liquorSolids());
    double dry =
        split.fibre() * feed.fibreKgps()
            + split.fines() * feed.finesFraction() * liquor
            + split.dissolved() * feed.dissolvedFraction() * liquor
            + feed.sandKgps(split.sand());
    assertThat(result.cakeKgps())
        .isEqualTo(dry + split.water() * water, within(1e-9 * (1 + result.cakeKgps())));
    boolean everything = split.water() == 1;
    boolean nothing = result.cakeKgps() == 0;
    if (!everything && !nothing) {
      assertThat(result.solids()).isEqualTo(solids, within(1e-9));
      assertThat(result.asAsked()).isTrue();
    }
    if (screened) {
      assertThat(split.sand().subList(3, 5)).containsOnly(1.0);
    }
  }

  @Property(tries = 60, edgeCases = EdgeCasesMode.NONE)
  void fillingLaneKeepsTheBalanceOfEveryClass(
      @ForAll("feeds") UnitFeed feed,
      @ForAll @DoubleRange(min = 1, max = 6) double width,
      @ForAll @DoubleRange(min = 0.1, max = 0.6) double level,
      @ForAll @DoubleRange(min = 0.05, max = 0.5) double storage,
      @ForAll @DoubleRange(min = 0.05, max = 0.9) double least) {
    List<LaneReach> reaches =
        List.of(
            new LaneReach(
                new OpenChannel(width, 0.002, 0.018), 20, OptionalDouble.of(level), storage, 0.7),
            new LaneReach(
                new OpenChannel(2 * width, 0, 0.018), 30, OptionalDouble.of(level), storage, 1));
    LaneFilling filling =
        LaneFilling.of(reaches, feed, OrganicMatter.FEEDLOT, 0.25, 0.4, Outlook.LIKELY, least);
    LaneFilling.Point last = filling.points().get(filling.points().size() - 1);
    double bulk = 0;
    for (int i = 0; i < reaches.size(); i++) {
      assertThat(last.depositsM().get(i)).isBetween(0.0, storage);
      bulk += last.depositsM().get(i) * reaches.get(i).areaM2();
    }
    double kept = filling.depositedKg().stream().mapToDouble(Double::doubleValue).sum();
    assertThat(kept).isEqualTo(bulk * 0.6 * 2650, within(1e-6 * (1 + kept)));
    for (int k = 0; k < SIZES.size(); k++) {
      assertThat(filling.depositedKg().get(k))
          .isLessThanOrEqualTo(filling.fedKg().get(k) * (1 + 1e-9));
    }
    for (LaneFilling.Point point : filling.points()) {
      allFinite(point.timeS(), point.recovery());
      point.velocitiesMps().forEach(velocity -> allFinite(velocity));
    }
    assertThat(filling.meanRecovery()).isBetween(0.0, 1.0);
    assertThat(filling.intervalS().isPresent()).isEqualTo(feed.sandTotalKgps() > 0);
  }

  @Property(tries = 100, edgeCases = EdgeCasesMode.NONE)
  void slowerLaneKeepsMoreSandAndMoreFibre(
      @ForAll("feeds") UnitFeed feed, @ForAll @DoubleRange(min = 1, max = 6) double width) {
    LaneReach lane =
        new LaneReach(new OpenChannel(width, 0.002, 0.018), 50, OptionalDouble.empty(), 0.1, 1);
    List<Double> velocities = new ArrayList<>();
    for (double velocity = 0.05; velocity < 0.8; velocity *= 1.2) {
      velocities.add(velocity);
    }
    List<LaneTrade> curve =
        LaneTrade.curve(lane, velocities, feed, OrganicMatter.FEEDLOT, 0.4, Outlook.CAUTIOUS);
    for (int i = 1; i < curve.size(); i++) {
      assertThat(curve.get(i).fibreRetained())
          .isLessThanOrEqualTo(curve.get(i - 1).fibreRetained() + 1e-12);
      assertThat(curve.get(i).sandRecovery())
          .isLessThanOrEqualTo(curve.get(i - 1).sandRecovery() + 1e-12);
      assertThat(curve.get(i).foreignMatter()).isBetween(0.0, 1.0);
    }
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void mixerSharesTheSandBetweenFloorAndFlow(
      @ForAll("feeds") UnitFeed feed, @ForAll @DoubleRange(min = 0, max = 10) double speed) {
    Impeller impeller = Impeller.Kind.PITCHED_BLADE.of(0.5);
    PitMixing mixing = PitMixing.of(impeller, speed, feed, 20);
    allFinite(mixing.powerW(), mixing.speedRatio(), mixing.residenceTimeS());
    assertThat(mixing.leftKgps(feed) + mixing.carriedKgps(feed))
        .isEqualTo(feed.sandTotalKgps(), within(1e-12 * (1 + feed.sandTotalKgps())));
    PitMixing faster = PitMixing.of(impeller, speed + 0.5, feed, 20);
    assertThat(faster.leftKgps(feed)).isLessThanOrEqualTo(mixing.leftKgps(feed));
    if (mixing.speedRatio() >= 1) {
      assertThat(mixing.leftKgps(feed)).isZero();
    }
  }
}
