package sandslurry.speed;

import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sandslurry.design.Design;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.Reading;

/** Designs to measure: the examples, and some that grow. */
final class Inputs {
  private Inputs() {}

  static DesignDocument example(String name) throws Exception {
    return DesignDocument.load(Path.of("..", "docs", "examples", name + ".json"));
  }

  static Design design(DesignDocument document) {
    Reading reading = document.read();
    return reading
        .design()
        .orElseThrow(() -> new IllegalStateException(reading.problems().toString()));
  }

  /** The parlor line cut into many runs, each with its part of the length and the rise. */
  static Design runs(int count) throws Exception {
    String run =
        """
        {"name": "Run %%d", "pipe": {"system": "ASTM D1785", "size": "4 in", "class": "Sch 40"},
         "roughness": "0.1 mm", "length": "%f m", "rise": "%f m"}\
        """
            .formatted(91.44 / count, 1.8288 / count);
    String runs =
        IntStream.rangeClosed(1, count).mapToObj(run::formatted).collect(Collectors.joining(","));
    return design(
        example("parlor-line")
            .withPart("/lines/0/route", "{\"sourceLevel\": \"3 ft\", \"runs\": [" + runs + "]}"));
  }

  /** A plant whose liquor passes one coarse screen after the other. */
  static Design units(int count) throws Exception {
    String units =
        IntStream.rangeClosed(1, count)
            .mapToObj(
                i ->
                    """
                    {"name": "Screen %d", "kind": "screen", "in": "%s", "cake": "cake %d",
                     "liquid": "liquor %d", "opening": "12 mm", "fibreCapture": "1 %%",
                     "cakeSolids": "20 %%"}\
                    """
                        .formatted(i, i == 1 ? "manure, rinse" : "liquor " + (i - 1), i, i))
            .collect(Collectors.joining(","));
    String products =
        IntStream.rangeClosed(1, count)
            .mapToObj("{\"stream\": \"cake %d\", \"use\": \"waste\"}"::formatted)
            .collect(Collectors.joining(","));
    return design(
        example("flushed-barn-lagoon")
            .without("/gravityRun")
            .withPart(
                "/plant",
                """
                {"pens": [{"name": "Barn", "stream": "manure", "cows": "400", "milk": "36 kg/d",
                  "stalls": "400", "sandPerStall": "22 kg/d", "water": "12 m3/d",
                  "scrapeInterval": "8 h"}],
                 "waters": [{"stream": "rinse", "flow": "2 m3/h"}],
                 "units": [%s],
                 "products": [%s, {"stream": "liquor %d", "use": "waste"}]}\
                """
                    .formatted(units, products, count)));
  }
}
