package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static sandslurry.ui.EventThread.onEventThread;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sandslurry.design.DesignDocument;

/** The page on the design file and the form know the same fields. */
class EveryFieldTest {
  private static final Pattern ROW =
      Pattern.compile("^\\| `(/[^`]+)` \\| [^|]+ \\| `\"?([^`\"]+)\"?`.*");

  /** Choices, which the page tells in words. */
  private static final Map<String, String> CHOICES =
      Map.ofEntries(
          Map.entry("/states/coldestCarrier/density", "1012 kg/m3"),
          Map.entry("/operation/flushPump", "yes"),
          Map.entry("/operation/flushCurve/0/head", "30 m"),
          Map.entry("/pump/cylinderDrive", "hydraulic"),
          Map.entry("/plant/production", "asabe-d384"),
          Map.entry("/plant/units/2/model", "plitt-1976"),
          Map.entry("/plant/units/6/mixer/impeller", "pitched blade"),
          Map.entry("/plant/units/6/overflow", "surplus"),
          Map.entry("/plant/pens/0/flush/in", "flush water"),
          Map.entry("/plant/prices/currency", "EUR"),
          Map.entry("/plant/targets/gradation", "ASTM C33"),
          Map.entry("/pump/others/1/standby", "yes"),
          Map.entry("/pump/others/1/name", "third"),
          Map.entry("/pump/others/1/curve/2/head", "60 ft"));

  @BeforeAll
  static void look() throws Exception {
    EventThread.installLook();
  }

  private static Map<String, String> documented() throws Exception {
    Map<String, String> fields = new LinkedHashMap<>(CHOICES);
    for (String line : Files.readAllLines(Path.of("..", "docs", "design-file.md"))) {
      Matcher row = ROW.matcher(line);
      if (row.matches()) {
        fields.put(row.group(1), row.group(2));
      }
    }
    return fields;
  }

  /** Designs that between them have every choice that brings fields with it. */
  private static List<DesignDocument> designs() {
    DesignDocument line =
        Designs.everything()
            .insert("/pump/others", 1, "{\"curve\": [{}, {}, {}]}")
            .withPart("/plant", "{\"pens\": [{}], \"modes\": [{}, {}], \"units\": []}");
    String[] kinds = {
      "box", "lane", "cyclone", "screen", "fibreSeparator", "splitter", "pit", "storage"
    };
    for (int i = 0; i < kinds.length; i++) {
      line =
          line.insert("/plant/units", i, "{\"kind\": \"" + kinds[i] + "\"}")
              .with("/dilution/mostRatio", "5");
    }
    List<DesignDocument> designs = new ArrayList<>(List.of(line));
    designs.add(line.without("/sand/gradation").with("/sand/d50", "1 mm"));
    designs.add(line.withPart("/pump", "{\"kind\": \"piston\", \"cylinders\": \"2\"}"));
    designs.add(line.withPart("/route/runs/0", "{\"bore\": \"4 in\"}"));
    designs.add(line.withPart("/mixture", "{\"massFraction\": \"3 %\"}"));
    designs.add(line.withPart("/mixture", "{\"sandRate\": \"1 kg/s\"}"));
    designs.add(line.withPart("/mixture", "{\"stream\": \"diluted\"}"));
    designs.add(line.withPart("/states", "{\"coldestCarrier\": {\"kind\": \"measured\"}}"));
    for (String kind : List.of("manure", "measured", "readings")) {
      designs.add(line.withPart("/carrier", "{\"kind\": \"" + kind + "\"}"));
    }
    for (String law : List.of("Newtonian", "power law", "Bingham", "Herschel-Bulkley")) {
      designs.add(line.withPart("/carrier", "{\"kind\": \"rheology\", \"law\": \"" + law + "\"}"));
    }
    return designs;
  }

  @Test
  void everyFieldOfThePageIsOnTheFormAndCanBeReachedFromAProblem() throws Exception {
    Map<String, String> missing = documented();
    assertThat(missing).hasSizeGreaterThan(150);
    onEventThread(
        () -> {
          for (DesignDocument design : designs()) {
            FormModel model = new FormModel(Designs.NEVER);
            InputsPanel inputs = new InputsPanel(model);
            missing
                .entrySet()
                .removeIf(
                    field -> {
                      model.startFrom(design.with(field.getKey(), field.getValue()));
                      return inputs.focus(field.getKey())
                          && shows(inputs, field.getKey(), field.getValue());
                    });
          }
          return null;
        });
    assertThat(missing).isEmpty();
  }

  private static boolean shows(InputsPanel inputs, String pointer, String text) {
    for (JComponent component : PanelsTest.all(inputs.component())) {
      if (!PanelsTest.isShown(component)) {
        continue;
      }
      if (component instanceof JTextField field && pointer.equals(field.getName())) {
        return field.getText().equals(text);
      }
      if (component instanceof JComboBox<?> box && pointer.equals(box.getName())) {
        return ((Choice) box.getSelectedItem()).value().equals(text);
      }
      if (component instanceof JTable table
          && table.getName() != null
          && pointer.startsWith(table.getName() + "/")) {
        return isIn(table, text);
      }
    }
    return false;
  }

  private static boolean isIn(JTable table, String text) {
    for (int row = 0; row < table.getRowCount(); row++) {
      for (int column = 0; column < table.getColumnCount(); column++) {
        if (table.getValueAt(row, column).equals(text)) {
          return true;
        }
      }
    }
    return false;
  }
}
