// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.meltwright.safety.naming.ListedName.Language;
import org.meltwright.safety.naming.ListedName.Use;

/** However a name of the list is typed, it tells the same. */
class GeneratedFormsTest {

  private static final List<ListedName> NAMES =
      NameList.standard().names().stream().filter(n -> n.use() != Use.LAST_PART).toList();

  private int asked;

  @Test
  void everyForm_ofEveryName_tellsWhatTheNameTells() {
    List<String> wrong = new ArrayList<>();
    for (ListedName name : NAMES) {
      for (String form : forms(name)) {
        asked++;
        if (!tells(form, name)) {
          wrong.add(form + " of " + name.text());
        }
      }
    }
    assertThat(wrong).isEmpty();
    assertThat(asked).isGreaterThan(25_000);
  }

  private static boolean tells(String form, ListedName name) {
    List<NamedHazard> told = HazardNames.ofName(form);
    return name.isFalseFriend()
        ? told.isEmpty()
        : told.stream().anyMatch(n -> n.hazard().equals(name.hazard()));
  }

  private static Set<String> forms(ListedName name) {
    Set<String> forms = new LinkedHashSet<>();
    addLetters(forms, name.text());
    addSigns(forms, name);
    addSurroundings(forms, name);
    addEndings(forms, name);
    forms.remove(name.text());
    return forms;
  }

  private static void addLetters(Set<String> forms, String text) {
    String parted = Normalizer.normalize(text, Normalizer.Form.NFD);
    forms.add(text.toUpperCase(Locale.ROOT));
    forms.add(text.toLowerCase(Locale.ROOT));
    forms.add(parted);
    forms.add(parted.replaceAll("\\p{Mn}", "").replace("œ", "oe"));
    forms.add(
        text.replace("ä", "ae")
            .replace("ö", "oe")
            .replace("ü", "ue")
            .replace("ß", "ss")
            .replace("Ä", "Ae")
            .replace("Ö", "Oe")
            .replace("Ü", "Ue"));
  }

  private static void addSigns(Set<String> forms, ListedName name) {
    String text = name.text();
    forms.add(text.replace(' ', '-'));
    forms.add(text.replace('-', ' '));
    forms.add(text.replace(' ', '\u00a0'));
    forms.add(text.replace('-', '\u2011'));
    forms.add(text.replace(" ", "").replace("-", ""));
    forms.add(text.replace(" ", "  "));
    forms.add(text.replace('\'', '’'));
    if (!name.isFalseFriend()) {
      forms.add(text.replaceFirst(" ", ", "));
    }
  }

  private static void addSurroundings(Set<String> forms, ListedName name) {
    String text = name.text();
    forms.add("  " + text + " ");
    forms.add("(" + text + ")");
    forms.add(text + " no. 3");
    forms.add(text + " light");
    if (name.use() != Use.ALONE) {
      forms.add(text + ", 100 g");
      forms.add("1 kg " + text);
    }
  }

  private static void addEndings(Set<String> forms, ListedName name) {
    for (String ending : endings(name.language())) {
      forms.add(name.text() + ending);
      forms.add(name.text().replaceAll("(?<=\\p{L})(?= )", ending) + ending);
    }
  }

  private static List<String> endings(Language language) {
    return switch (language) {
      case ENGLISH -> List.of("s", "es");
      case GERMAN -> List.of("e", "n", "en", "s");
      case FRENCH -> List.of("s", "x");
      case ITALIAN -> List.of();
      case SPANISH -> List.of("s", "es");
    };
  }
}
