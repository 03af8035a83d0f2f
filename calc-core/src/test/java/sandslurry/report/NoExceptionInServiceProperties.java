package sandslurry.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import sandslurry.assessment.Evaluation;
import sandslurry.design.RandomDesigns;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.Reading;
import sandslurry.report.block.TextView;

/** Lines that stop, pulse, surge and are flushed, drawn at random, come to a report. */
class NoExceptionInServiceProperties {
  private static String number(Random random, double low, double high, String unit) {
    return String.format(
        Locale.ROOT, "%.6g %s", low * Math.pow(high / low, random.nextDouble()), unit);
  }

  private static DesignDocument drawn(long seed) throws Exception {
    Random random = new Random(seed);
    DesignDocument line =
        DesignDocument.parse(RandomDesigns.plausibleLine(seed))
            .without("/lines/0/pump")
            .without("/lines/0/states")
            .without("/lines/0/operation")
            .without("/screw")
            .with("/lines/0/pump/kind", "piston")
            .with("/lines/0/pump/displacement", number(random, 0.01, 1000, "L"))
            .with("/lines/0/pump/strokeRate", number(random, 0.5, 60, "1/min"))
            .with("/lines/0/pump/volumetricEfficiency", "90 %")
            .with("/lines/0/pump/pressureLimit", number(random, 10, 50000, "kPa"))
            .with("/lines/0/pump/cylinders", random.nextBoolean() ? "1" : "2")
            .with("/lines/0/operation/dailyVolume", number(random, 0.01, 1e5, "m3"))
            .with("/lines/0/operation/batchVolume", number(random, 0.01, 1e5, "m3"))
            .with("/lines/0/operation/stopTime", number(random, 1e-3, 3600, "s"))
            .with("/lines/0/states/thickestSand", number(random, 0.001, 40, "%"));
    if (random.nextBoolean()) {
      line =
          line.with("/lines/0/pump/cylinderDrive", "hydraulic")
              .with("/lines/0/pump/changeover", "0.05 s");
    }
    if (random.nextBoolean()) {
      line = line.with("/lines/0/pump/vesselGas", number(random, 0.1, 20000, "L"));
    }
    return switch (random.nextInt(4)) {
      case 0 -> line.with("/lines/0/operation/flushPump", "yes");
      case 1 -> line.with("/lines/0/operation/flushFlow", number(random, 0.05, 2000, "L/s"));
      case 2 -> line.with("/lines/0/operation/flushLevel", number(random, 0.01, 100, "m"));
      default ->
          line.insert(
                  "/lines/0/operation/flushCurve", 0, "{\"flow\": \"0 L/s\", \"head\": \"80 m\"}")
              .insert(
                  "/lines/0/operation/flushCurve",
                  1,
                  "{\"flow\": \""
                      + number(random, 0.1, 2000, "L/s")
                      + "\", \"head\": \""
                      + number(random, 0.1, 80, "m")
                      + "\"}");
    };
  }

  @Property(tries = 60)
  void aLineInServiceComesToAReportOfPlainNumbers(@ForAll long seed) throws Exception {
    Reading reading = drawn(seed).read();
    if (reading.design().isEmpty()) {
      assertThat(reading.problems()).isNotEmpty();
      return;
    }
    String report =
        new TextView(100)
            .write(DesignReport.everything(Evaluation.assess(reading.design().orElseThrow())));
    assertThat(report).doesNotContain("NaN", "Infinity");
  }
}
