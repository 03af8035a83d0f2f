package sandslurry.pump.rotodynamic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import sandslurry.numeric.UnsolvedException;
import sandslurry.pump.rotodynamic.DutyPoints.Absence;
import sandslurry.pump.rotodynamic.DutyPoints.DutyPoint;
import sandslurry.pump.rotodynamic.DutyPoints.Meeting;

class DutyPointsTest {
  private final DoubleUnaryOperator pump = flow -> 30 - 8000 * flow * flow;

  @Test
  void aParabolicPumpAndSystemMeetWhereAlgebraSays() {
    DutyPoints duty = DutyPoints.find(pump, flow -> 10 + 12000 * flow * flow, 0, 0.06);
    assertThat(duty.points()).hasSize(1);
    assertThat(duty.points().get(0).flowM3ps()).isCloseTo(Math.sqrt(1e-3), within(1e-12));
    assertThat(duty.points().get(0).headM()).isCloseTo(22, within(1e-9));
    assertThat(duty.stable()).hasSize(1);
    assertThat(duty.absence()).isEmpty();
  }

  /** Counted, since every head costs a friction of every run of the line. */
  @Test
  void farFromTheDutyPointFewHeadsAreAskedFor() {
    AtomicInteger asked = new AtomicInteger();
    DoubleUnaryOperator system =
        flow -> {
          asked.incrementAndGet();
          return 10 + 12000 * flow * flow;
        };
    assertThat(DutyPoints.find(pump, system, 0, 0.06).points()).hasSize(1);
    assertThat(asked.get()).isLessThanOrEqualTo(111);
  }

  @Test
  void aWeakPumpIsSaidToBeTooWeakAndByHowMuch() {
    DutyPoints duty = DutyPoints.find(pump, flow -> 32 - 200 * flow + 9000 * flow * flow, 0, 0.06);
    assertThat(duty.points()).isEmpty();
    assertThat(duty.absence()).contains(Absence.PUMP_TOO_WEAK);
    // The gap -2 + 200 Q - 17000 Q^2 is least at Q = 100/17000.
    assertThat(duty.closestFlowM3ps()).isCloseTo(100.0 / 17000, within(1e-7));
    assertThat(duty.closestGapM()).isCloseTo(-2 + 10000.0 / 17000, within(1e-9));
  }

  @Test
  void aCurveThatEndsBeforeTheSystemIsSaidToEndTooEarly() {
    DutyPoints duty = DutyPoints.find(pump, flow -> 5 + 1000 * flow * flow, 0, 0.03);
    assertThat(duty.absence()).contains(Absence.CURVE_ENDS_TOO_EARLY);
    assertThat(duty.closestFlowM3ps()).isEqualTo(0.03);
    assertThat(duty.closestGapM()).isCloseTo(25 - 8.1, within(1e-12));
  }

  @Test
  void aCurveThatBeginsBeyondTheSystemIsSaidToBeginTooLate() {
    DutyPoints duty = DutyPoints.find(pump, flow -> 10 + 60000 * flow * flow, 0.02, 0.06);
    assertThat(duty.absence()).contains(Absence.CURVE_BEGINS_TOO_LATE);
  }

  @Test
  void pointsAtTheEndsOfTheRangeAreFoundWithTheirStability() {
    DutyPoints atEnd = DutyPoints.find(flow -> 10 - 100 * flow, flow -> 8 - 80 * flow, 0, 0.1);
    assertThat(atEnd.points()).containsExactly(new DutyPoint(0.1, 0, Meeting.STABLE));
    DutyPoints atBegin = DutyPoints.find(flow -> 10, flow -> 10 + flow, 0, 0.1);
    assertThat(atBegin.points()).containsExactly(new DutyPoint(0, 10, Meeting.STABLE));
    DutyPoints unstable = DutyPoints.find(flow -> 10, flow -> 10 - flow, 0, 0.1);
    assertThat(unstable.points()).containsExactly(new DutyPoint(0, 10, Meeting.UNSTABLE));
  }

  @Test
  void aPointOnASampleOfTheScanIsFoundOnce() {
    for (double slope : new double[] {100, -100}) {
      DutyPoints duty = DutyPoints.find(flow -> 10, flow -> 10 + slope * (flow - 0.05), 0, 0.1);
      assertThat(duty.points()).hasSize(1);
      assertThat(duty.points().get(0).flowM3ps()).isCloseTo(0.05, within(1e-12));
      assertThat(duty.points().get(0).meeting())
          .isEqualTo(slope > 0 ? Meeting.STABLE : Meeting.UNSTABLE);
    }
  }

  @Test
  void aTouchOnASampleOfTheScanIsFoundOnce() {
    DutyPoints duty =
        DutyPoints.find(
            flow -> 10, flow -> 10 + 2000 * (flow - 0.0625) * (flow - 0.0625), 0, 0.125);
    assertThat(duty.points()).containsExactly(new DutyPoint(0.0625, 10, Meeting.TOUCHING));
  }

  @Test
  void aTouchHalfwayBetweenTwoSamplesIsFoundOnce() {
    double middle = 0.125 / 400 * 100.5;
    DutyPoints duty = DutyPoints.find(flow -> 10, flow -> 10 + Math.abs(flow - middle), 0, 0.125);
    assertThat(duty.points()).hasSize(1);
    assertThat(duty.points().get(0).meeting()).isEqualTo(Meeting.TOUCHING);
  }

  @Test
  void aJumpOverThePumpCurveIsCalledAJump() {
    DutyPoints duty = DutyPoints.find(flow -> 10, flow -> flow < 0.0333 ? 8 : 13, 0, 0.1);
    assertThat(duty.points()).hasSize(1);
    assertThat(duty.points().get(0).meeting()).isEqualTo(Meeting.JUMP);
    assertThat(duty.points().get(0).flowM3ps()).isCloseTo(0.0333, within(1e-9));
    assertThat(duty.stable()).isEmpty();
  }

  /**
   * A head that leaps through zero has no root: where it leaps so far that the search for one gives
   * up, the leap itself is the meeting, and it is found where it is.
   */
  @Test
  void aHeadThatLeapsThroughZeroHasItsDutyPointAtTheLeap() {
    // Off the samples of the scan, small before the leap and great behind it, and the reverse.
    for (double leap : new double[] {0.0333, 0.05003, 1e-4, 0.0999}) {
      for (double behind : new double[] {-1e-3, -5, -1e9}) {
        DutyPoints down =
            DutyPoints.find(
                flow -> 10,
                flow -> 10 - (flow < leap ? 1e-3 * (leap - flow) + 1e-6 : behind),
                0,
                0.1);
        assertThat(down.points())
            .singleElement()
            .satisfies(
                point -> {
                  assertThat(point.meeting()).isEqualTo(Meeting.JUMP);
                  assertThat(point.flowM3ps()).isCloseTo(leap, within(1e-8 * leap));
                  assertThat(point.headM()).isEqualTo(10);
                });
        DutyPoints up =
            DutyPoints.find(flow -> 10, flow -> 10 + (flow < leap ? 5 : behind), 0, 0.1);
        assertThat(up.points())
            .singleElement()
            .satisfies(
                point -> {
                  assertThat(point.meeting()).isEqualTo(Meeting.JUMP);
                  assertThat(point.flowM3ps()).isCloseTo(leap, within(1e-8 * leap));
                });
        assertThat(up.absence()).isEmpty();
      }
    }
  }

  @Test
  void aLeapOverAHeadThatIsNoNumberIsNoDutyPoint() {
    assertThatThrownBy(
            () ->
                DutyPoints.find(
                    flow -> 10,
                    flow -> Math.abs(flow - 0.0333) < 1e-6 ? Double.NaN : flow < 0.0333 ? 8 : 13,
                    0,
                    0.1))
        .isInstanceOf(UnsolvedException.class);
  }

  @Test
  void aNearMissIsNotCalledAMeeting() {
    DutyPoints duty =
        DutyPoints.find(
            flow -> 10, flow -> 10.000001 + 2000 * (flow - 0.0437) * (flow - 0.0437), 0, 0.1);
    assertThat(duty.points()).isEmpty();
    assertThat(duty.closestGapM()).isCloseTo(-1e-6, within(1e-12));
  }

  @Test
  void badInputsAreRefused() {
    assertThatThrownBy(() -> DutyPoints.find(pump, pump, 0.1, 0.1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("0.1");
    assertThatThrownBy(() -> DutyPoints.find(pump, pump, 0, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> DutyPoints.find(pump, flow -> 1 / flow, 0, 0.1))
        .isInstanceOf(UnsolvedException.class)
        .hasMessageContaining("0.0 m3/s");
  }
}
