package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import javax.swing.JComponent;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import sandslurry.design.DesignDocument;

class FieldDefaultsTest {
  @Test
  void everyDefaultShownInAnEmptyFieldIsTheOneThatCounts() throws Exception {
    DesignDocument lines =
        Designs.everything()
            .with("/carrier/kind", "manure")
            .with("/carrier/totalSolids", "3 %")
            .with("/dilution/mostRatio", "5");
    assertThat(checked(lines)).isGreaterThan(14);
    DesignDocument plant = Designs.example("closed-loop-dairy.json");
    String reach = "{\"length\": \"9 m\", \"width\": \"2 m\", \"slope\": \"1 %\", ";
    DesignDocument withLane =
        plant
            .withPart(
                "/plant/units/3", "{\"reaches\": [" + reach + "\"sandStorageDepth\": \"300 mm\"}]}")
            .with("/plant/units/3/kind", "lane");
    for (String field : new String[] {"name", "in", "sand", "overflow"}) {
      withLane = withLane.with("/plant/units/3/" + field, plant.text("/plant/units/3/" + field));
    }
    assertThat(checked(plant)).isGreaterThan(30);
    assertThat(checked(withLane)).isGreaterThan(30);
  }

  private static int checked(DesignDocument start) throws Exception {
    assertThat(start.read().problems()).isEmpty();
    int checked = 0;
    for (Map.Entry<String, String> field : standards(start).entrySet()) {
      DesignDocument without = start.without(field.getKey());
      DesignDocument with = without.with(field.getKey(), field.getValue());
      if (without.read().design().isPresent()) {
        assertThat(words(with).equals(words(without))).as(field.getKey()).isTrue();
        checked++;
      }
    }
    return checked;
  }

  /** Every field that shows its default, with that default; of lists for every entry. */
  private static Map<String, String> standards(DesignDocument start) throws Exception {
    return EventThread.onEventThread(
        () -> {
          FormModel model = new FormModel(Designs.NEVER);
          model.startFrom(start);
          InputsPanel inputs = new InputsPanel(model);
          Map<String, String> found = new LinkedHashMap<>();
          for (int i = 0; i < Math.max(1, start.size("/plant/units")); i++) {
            inputs.focus("/plant/units/" + i);
            for (JComponent component : PanelsTest.all(inputs.component())) {
              if (component instanceof JTextField field
                  && PanelsTest.isShown(field)
                  && field.getClientProperty("JTextField.placeholderText") instanceof String text
                  && text.startsWith("default ")) {
                found.put(field.getName(), text.substring("default ".length()));
              }
            }
          }
          return found;
        });
  }

  /** The design in words; a gradation, which is the same in all, shows only its address. */
  private static String words(DesignDocument document) {
    return document.read().design().orElseThrow().toString().replaceAll("@[0-9a-f]+", "");
  }
}
