package sandslurry.pipe.surge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import sandslurry.pipe.catalogue.PipeCatalogue;
import sandslurry.pipe.catalogue.StandardPipe;

class Joukowsky1898Test {
  private final Joukowsky1898 surge = new Joukowsky1898();
  private final StandardPipe pvc = PipeCatalogue.get("ASTM D2241", "6 in", "SDR 26");

  @Test
  void theSurgeIsInProportionToTheVelocityStopped() {
    assertThat(surge.surgePa(pvc, 1000, 0)).isZero();
    assertThat(surge.surgePa(pvc, 1000, 3))
        .isCloseTo(3 * surge.surgePa(pvc, 1000, 1), within(1e-6));
  }

  @Test
  void aDenserLiquidGivesAGreaterSurgeByTheRootOfItsDensity() {
    double ratio = surge.surgePa(pvc, 1180, 1) / surge.surgePa(pvc, 1000, 1);
    assertThat(ratio).isCloseTo(Math.sqrt(1.18), within(1e-12));
  }

  @Test
  void noPipeCarriesAWaveFasterThanSoundInWaterAndStiffPipesComeClosest() {
    double sound = Math.sqrt(2.07e9 / 1000);
    for (StandardPipe pipe : PipeCatalogue.all()) {
      assertThat(surge.waveSpeedMps(pipe, 1000)).as(pipe.words()).isBetween(150.0, sound);
    }
    StandardPipe steel = PipeCatalogue.get("ASME B36.10M", "6 in", "Sch 40");
    assertThat(surge.waveSpeedMps(steel, 1000)).isGreaterThan(surge.waveSpeedMps(pvc, 1000));
  }

  @Test
  void aSlowStopGivesTheHeadOfARigidColumnTwiceAndASuddenOneThatOfTheWave() {
    assertThat(surge.stopPa(1000, 400, 2, 100, 0.5)).isCloseTo(8e5, within(1e-6));
    assertThat(surge.stopPa(1000, 400, 2, 100, 0)).isCloseTo(8e5, within(1e-6));
    assertThat(surge.stopPa(1000, 400, 2, 100, 5)).isCloseTo(2 * 1000 * 100 * 2 / 5, within(1e-6));
    assertThat(surge.stopPa(1000, 400, 2, 0, 1)).isZero();
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> surge.waveSpeedMps(pvc, 0)).hasMessageContaining("0.0 kg/m3");
    assertThatThrownBy(() -> surge.surgePa(pvc, 1000, Double.NaN)).hasMessageContaining("NaN m/s");
    assertThatThrownBy(() -> surge.waveSpeedMps(1000, 2e9, 0.1, 0, 2e9))
        .hasMessageContaining("0.0 m");
    assertThatThrownBy(() -> surge.stopPa(1000, 400, 2, 100, -1)).hasMessageContaining("-1.0 s");
  }
}
