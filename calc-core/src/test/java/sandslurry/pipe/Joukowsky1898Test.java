package sandslurry.pipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

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
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> surge.waveSpeedMps(pvc, 0)).hasMessageContaining("0.0 kg/m3");
    assertThatThrownBy(() -> surge.surgePa(pvc, 1000, Double.NaN)).hasMessageContaining("NaN m/s");
  }
}
