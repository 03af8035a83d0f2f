package sandslurry.plant.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.plant.Plant.THREE;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.material.sand.SizeClass;
import sandslurry.plant.Constituents;
import sandslurry.plant.ManureSolids;
import sandslurry.plant.Plant;
import sandslurry.plant.Stream;
import sandslurry.plant.network.SteadyBalance;

/** Sand that circulates, put back through a plant. */
class SandCirculationProperties {
  private static final Stream NEW = THREE.deliveredSand(2);
  private static final int FINES = Constituents.MINERAL_FINES;

  /** A plant that gives back a share of the mineral fines and of each class, whatever the load. */
  private static UnaryOperator<Stream> plant(double... shares) {
    return bedded -> {
      double[] flows = bedded.toArray();
      for (int i = 0; i < shares.length; i++) {
        flows[FINES + i] *= shares[i];
      }
      return Stream.of(THREE, flows);
    };
  }

  /** A plant that catches the less of each class the more fines and fine sand it is fed. */
  private static UnaryOperator<Stream> loaded(double strength, double... shares) {
    return bedded -> {
      double fine = bedded.kgps(FINES) + bedded.sandKgps(0);
      double[] now = new double[shares.length];
      for (int i = 0; i < now.length; i++) {
        now[i] = shares[i] / (1 + strength * fine / 2);
      }
      return plant(now).apply(bedded);
    };
  }

  private static void balances(SandCirculation rest, UnaryOperator<Stream> plant) {
    Stream back = plant.apply(rest.bedded());
    double all = 0;
    for (int i = FINES; i < THREE.count(); i++) {
      double bought = rest.bought().kgps(i);
      // Each class bedded is what is bought and what the plant gives back of that bedding.
      assertThat(rest.bedded().kgps(i)).isCloseTo(bought + back.kgps(i), within(2e-9));
      all += rest.bedded().kgps(i);
    }
    assertThat(all).isCloseTo(2, within(1e-9));
    for (int i = FINES; i < THREE.count(); i++) {
      double parts = rest.bought().kgps(i) + rest.rebedded().kgps(i);
      assertThat(parts).isCloseTo(rest.bedded().kgps(i), within(1e-5 * rest.bedded().kgps(i)));
    }
    double m = rest.bought().massKgps();
    for (int i = FINES; i < THREE.count(); i++) {
      assertThat(rest.bought().kgps(i)).isCloseTo(m * NEW.kgps(i) / 2, within(1e-12));
    }
  }

  @Property
  void withCaptureThatDoesNotDependOnTheLoadItIsTheClassBalance(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.5) double fines,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.9) double fine,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.99) double middle,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.999) double coarse) {
    UnaryOperator<Stream> plant = plant(fines, fine, middle, coarse);
    SandCirculation rest = SandCirculation.of(NEW, plant);
    List<SizeClass> bought = new ArrayList<>();
    bought.add(new SizeClass(1e-5, 0.075e-3, 0.03e-3, NEW.kgps(FINES) / 2));
    for (int k = 0; k < 3; k++) {
      SizeClass size = THREE.sandClasses().get(k);
      bought.add(new SizeClass(size.lowM(), size.highM(), size.meanM(), NEW.sandKgps(k) / 2));
    }
    SandCycle cycle = SandCycle.of(bought, List.of(fines, fine, middle, coarse), 2);
    for (int i = 0; i < 4; i++) {
      assertThat(rest.bedded().kgps(FINES + i))
          .isCloseTo(2 * cycle.bedded().get(i).massFraction(), within(1e-9));
    }
    assertThat(rest.bought().massKgps()).isCloseTo(cycle.boughtKgps(), within(1e-9));
    assertThat(rest.notBought())
        .isCloseTo(1 - cycle.boughtKgps() / cycle.beddedKgps(), within(1e-9));
    assertThat(rest.notBoughtOfNewSand()).isCloseTo(cycle.recoveryOfNewSand(), within(1e-12));
    assertThat(rest.converged()).isTrue();
    balances(rest, plant);
  }

  @Property
  void withCaptureThatDependsOnTheLoadEachClassIsMadeUpAllTheSame(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 5) double strength,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.3) double fines,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.9) double fine,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.0999) double gain) {
    UnaryOperator<Stream> plant =
        loaded(strength, Math.min(fines, fine), fine, fine + gain / 2, fine + gain);
    SandCirculation rest = SandCirculation.of(NEW, plant);
    assertThat(rest.converged()).isTrue();
    balances(rest, plant);
    // It is coarser than what is bought, and more of it comes back.
    assertThat(rest.bedded().kgps(FINES)).isLessThanOrEqualTo(NEW.kgps(FINES) * (1 + 1e-8));
    assertThat(rest.notBought()).isGreaterThanOrEqualTo(rest.notBoughtOfNewSand() - 1e-8);
  }

  @Example
  void withoutCaptureNothingCirculatesAndAllIsBought() {
    SandCirculation rest = SandCirculation.of(NEW, plant(0, 0, 0, 0));
    assertThat(rest.bought().massKgps()).isCloseTo(2, within(1e-12));
    assertThat(rest.rebedded().massKgps()).isZero();
    assertThat(rest.notBought()).isZero();
    assertThat(rest.bedded()).isEqualTo(NEW);
    assertThat(rest.turnsToRest()).isEqualTo(3, within(1e-12));
  }

  @Example
  void withAllCaughtOnlyWhatIsNotBeddedAgainIsBought() {
    SandCirculation some = SandCirculation.of(NEW, plant(0.95, 0.95, 0.95, 0.95));
    assertThat(some.bought().massKgps()).isCloseTo(0.05 * 2, within(1e-9));
    for (int i = FINES; i < THREE.count(); i++) {
      assertThat(some.bedded().kgps(i)).isCloseTo(NEW.kgps(i), within(1e-9));
    }
    SandCirculation all = SandCirculation.of(NEW, plant(1, 1, 1, 1));
    assertThat(all.bought().massKgps()).isCloseTo(0, within(1e-8));
    SandCirculation coarse = SandCirculation.of(NEW, plant(0, 0.5, 0.9, 1));
    assertThat(coarse.bedded().sandKgps(2)).isCloseTo(2, within(1e-6));
    assertThat(coarse.bought().massKgps()).isCloseTo(0, within(1e-6));
  }

  @Example
  void aPlantThatMakesSandIsRefusedAndNoBeddingIsNoCirculation() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SandCirculation.of(NEW, plant(1, 1, 1, 1.01)))
        .withMessageContaining("more of a class");
    SandCirculation none = SandCirculation.of(THREE.deliveredSand(0), plant(0, 0, 0, 0.9));
    assertThat(none.notBought()).isZero();
    assertThat(none.turnsToRest()).isZero();
  }

  @Example
  void throughANetworkWithARecycleTheClassesBalance() {
    UnaryOperator<Stream> plant =
        bedded -> {
          Stream manure = Stream.liquor(THREE, 0.39, 0.128, ManureSolids.FRESH).plus(bedded);
          SteadyBalance balance =
              Plant.balance(
                  Plant.loop(Plant.sandOnly(0.5, 0.9, 0.999), 0.5, 1e-3),
                  java.util.Map.of("manure", manure, "wash", THREE.water(0.1)));
          return balance.stream("sand").times(0.9);
        };
    SandCirculation rest = SandCirculation.of(NEW, plant);
    assertThat(rest.converged()).isTrue();
    balances(rest, plant);
  }
}
