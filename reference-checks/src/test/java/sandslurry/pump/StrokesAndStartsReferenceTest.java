package sandslurry.pump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.outside.Ours.ours;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.pump.drive.DailyDuty;
import sandslurry.pump.drive.MotorStarts;
import sandslurry.pump.piston.CrankDrive;
import sandslurry.units.InUnit;
import sandslurry.units.Measure;

/** Starts of motors, and the pulse of piston pumps with and without an air vessel. */
class StrokesAndStartsReferenceTest {
  private static final double KILOWATT = Measure.POWER.entry("kW").toSi(1);
  private static final double MINUTE = Measure.TIME.entry("min").toSi(1);

  /**
   * Source: U.S. Army Corps of Engineers, Engineering Instructions 11C201 (1 March 1997), Table
   * 7-1, Minimum Pump Cycle Times (read at buildingcriteria1.tpub.com, ufc_3_240_04a0053): less
   * than 15 kW 10 to 15 minutes, 15 to 75 kW 15 to 20, 75 to 185 kW 20 to 30; over 185 kW as
   * recommended by the manufacturer. Tolerance: none but rounding.
   */
  @ParameterizedTest
  @CsvSource({"5, 10", "14.9, 10", "15, 15", "74, 15", "75, 20", "185, 20"})
  void theShorterTimeOfTheTableIsTheLimit(double kilowatts, double minutes) {
    ours(1 / MotorStarts.mostPs(kilowatts * KILOWATT).orElseThrow())
        .isCloseTo(minutes * MINUTE, within(1e-6));
  }

  /** Source: as above. */
  @Test
  void overTheEndOfTheTableOnlyTheMakerKnows() {
    assertThat(MotorStarts.mostPs(186 * KILOWATT)).isEmpty();
  }

  /**
   * Source: as above, the formula of its page, V = t q/4, for the volume between start and stop of
   * a pump of q: with 45 L/s and the 10 minutes of a small motor 6750 L. Tolerance: rounding.
   */
  @Test
  void theVolumeOfThePitOfThatPageStartsThePumpAsOftenAsItsTimeAllows() {
    double flow = 0.045;
    double volume = 10 * MINUTE * flow / 4;
    ours(volume).isCloseTo(6.75, within(1e-9));
    DailyDuty duty = new DailyDuty(100, volume, flow);
    ours(duty.greatestStartRatePs() * InUnit.HOUR.si(1)).isCloseTo(6, within(1e-9));
  }

  /**
   * Source: lecture notes on reciprocating pumps, "Savings in work done" (read at scribd.com,
   * document 357383598): an air vessel saves 84.8 % of the work of friction of a single-acting pump
   * and 39.2 % of a double-acting one, friction going as the square of the flow and the piston as a
   * sine. Work of friction is the mean of the flow cubed. Tolerance: printed digits.
   */
  @ParameterizedTest
  @CsvSource({"1, false, 84.8", "1, true, 39.2", "2, false, 39.2"})
  void theWorkOfFrictionThatAnAirVesselSaves(int cylinders, boolean acting, double percent) {
    CrankDrive drive = new CrankDrive(cylinders, acting, 0, 1e9);
    int steps = 36000;
    double cubes = 0;
    for (int i = 0; i < steps; i++) {
      cubes += Math.pow(drive.relativeFlow(2 * Math.PI * (i + 0.5) / steps), 3) / steps;
    }
    ours(100 * (1 - 1 / cubes)).isCloseTo(percent, within(0.05));
  }

  /**
   * Source: volume above the mean flow that a vessel must store, over the volume of a stroke, in
   * handbooks of dampeners: 0.55 for one single-acting cylinder, 0.21 for two; from memory,
   * unverified. Tolerance: printed digits. Two cylinders make two strokes a cycle.
   */
  @ParameterizedTest
  @CsvSource({"1, 0.55", "2, 0.21"})
  void theVolumeThatAVesselStores(int cylinders, double ofStroke) {
    CrankDrive drive = new CrankDrive(cylinders, false, 0, 1e9);
    ours(drive.surplusShare() * cylinders).isCloseTo(ofStroke, within(0.005));
  }

  /**
   * Source: a textbook problem (read at civinnovate.com, 31 July 2025) prints for a single-acting
   * pump of 125 mm bore and 250 mm stroke at 40 turns a minute a turning speed of 4.189 rad/s, a
   * piston of 0.01227 m2 and a pipe of 100 mm, with the air vessel 1.5 m away; by the formula of
   * all such problems, (l/g)(A/a) ω² r, that is an acceleration head of 0.524 m (worked out here).
   * Tolerance: printed digits.
   */
  @Test
  void theAccelerationHeadUpToAnAirVessel() {
    double pipe = Math.PI / 4 * 0.1 * 0.1;
    double rate = 40 / MINUTE;
    double mean = 0.01227 * 0.25 * rate / pipe;
    double expected = 1.5 / 9.80665 * (0.01227 / pipe) * 4.189 * 4.189 * 0.125;
    ours(expected).isCloseTo(0.524, within(5e-4));
    ours(new CrankDrive(1, false, 0, 1e9).accelerationHeadM(1.5, mean, rate))
        .isCloseTo(expected, within(5e-4));
  }
}
