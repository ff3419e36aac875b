// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.meltwright.core.material.IdentifierScheme;
import org.meltwright.safety.hazard.HeatUse;
import org.meltwright.safety.hazard.PigmentHazard;
import org.meltwright.safety.hazard.PigmentHazards;
import org.meltwright.safety.naming.ListedName.Use;

/** Laws that hold for every row of the list. */
class NameListTest {

  private static final NameList LIST = NameList.standard();

  /** Names that stand in two entries, both of which are told. */
  private static final Set<String> SHARED = Set.of("wienerrot", "bichromate");

  private static Set<String> told(String name) {
    return HazardNames.ofName(name).stream().map(n -> n.hazard().id()).collect(Collectors.toSet());
  }

  private static Stream<ListedName> whole() {
    return LIST.names().stream().filter(n -> n.use() != Use.LAST_PART);
  }

  @Test
  void list_holdsTheNamesOfFiveLanguages() {
    assertThat(LIST.hazards()).hasSizeGreaterThan(280);
    assertThat(LIST.names()).hasSizeGreaterThan(4100);
    for (ListedName.Language language : ListedName.Language.values()) {
      assertThat(LIST.names()).filteredOn(n -> n.language() == language).hasSizeGreaterThan(300);
    }
  }

  @Test
  void everyName_tellsItsEntry() {
    assertThat(whole().filter(n -> !n.isFalseFriend()))
        .isNotEmpty()
        .allSatisfy(n -> assertThat(told(n.text())).as(n.text()).contains(n.hazard().id()));
  }

  @Test
  void everyName_tellsNothingElse() {
    assertThat(whole().filter(n -> !n.isFalseFriend()))
        .filteredOn(n -> !SHARED.contains(squeezed(n)))
        .allSatisfy(n -> assertThat(told(n.text())).as(n.text()).hasSize(1));
  }

  private static String squeezed(ListedName name) {
    FoldedText folded = FoldedText.of(name.text());
    return folded.part(0, folded.length());
  }

  @Test
  void everyFalseFriend_tellsNothing() {
    assertThat(whole().filter(ListedName::isFalseFriend))
        .hasSizeGreaterThan(130)
        .allSatisfy(n -> assertThat(told(n.text())).as(n.text()).isEmpty());
  }

  @Test
  void nameWithASense_isFoundBareAsSeveralThingsOrTheWorse() {
    Pattern sense = Pattern.compile(" \\([^)]*\\)$");
    List<ListedName> names =
        whole().filter(n -> !n.isFalseFriend() && sense.matcher(n.text()).find()).toList();
    assertThat(names)
        .hasSizeGreaterThan(80)
        .allSatisfy(
            n -> {
              String bare = sense.matcher(n.text()).replaceFirst("");
              NamedHazard worst = HazardNames.ofName(bare).get(0);
              assertThat(worst.heatUse()).as(bare).isLessThanOrEqualTo(n.hazard().heatUse());
            });
  }

  @Test
  void everyEntry_hasTextsInBothLanguages() {
    assertThat(LIST.hazards())
        .allSatisfy(
            h -> {
              assertThat(h.text(Locale.ENGLISH)).as(h.id()).isNotBlank();
              assertThat(h.text(Locale.GERMAN)).as(h.id()).isNotBlank();
              assertThat(h.kind().label(Locale.ENGLISH)).isNotBlank();
              assertThat(h.kind().label(Locale.GERMAN)).isNotBlank();
            });
  }

  @Test
  void everyEntry_hasItsOwnId() {
    assertThat(LIST.hazards()).extracting(ListedHazard::id).doesNotHaveDuplicates();
  }

  @Test
  void everyKind_isUsed() {
    assertThat(LIST.hazards().stream().map(ListedHazard::kind).collect(Collectors.toSet()))
        .containsExactlyInAnyOrder(NameKind.values());
  }

  @Test
  void casNumbersAndColourIndexNames_areWellFormed() {
    assertThat(LIST.hazards())
        .allSatisfy(
            h -> {
              assertThat(h.casNumbers()).as(h.id()).allMatch(IdentifierScheme.CAS::accepts);
              assertThat(h.colourIndexNames())
                  .as(h.id())
                  .allMatch(IdentifierScheme.COLOUR_INDEX_NAME::accepts);
            });
  }

  @Test
  void everyPigmentNeverHeated_hasANameInTheList() {
    assertThat(PigmentHazards.all())
        .filteredOn(p -> p.heatUse() == HeatUse.NEVER_HEATED)
        .extracting(PigmentHazard::id)
        .hasSizeGreaterThanOrEqualTo(40)
        .allSatisfy(id -> assertThat(LIST.require(id).pigment()).isPresent());
  }

  @Test
  void everyPigmentOfTheTable_thatIsToxic_isFoundByItsOwnNames() {
    assertThat(PigmentHazards.all())
        .filteredOn(
            p ->
                LIST.hazards().stream()
                    .anyMatch(h -> h.id().equals(p.id()) && h.kind() != NameKind.ORDINARY_PIGMENT))
        .hasSizeGreaterThan(80)
        .allSatisfy(
            p -> {
              for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.GERMAN}) {
                assertThat(HazardNames.ofName(p.name(locale)))
                    .as(p.name(locale))
                    .first()
                    .satisfies(n -> assertThat(n.heatUse()).isLessThanOrEqualTo(p.heatUse()));
              }
            });
  }

  @Test
  void everyStatement_namesASourceThatStandsInTheFile() {
    Set<String> words = Set.of("remembered", "common practice", "derived");
    Set<String> sources =
        lines("source: ").map(l -> l.substring("source: ".length())).collect(Collectors.toSet());
    Pattern name = Pattern.compile("^  (?:en|de|fr|it|es)(?:-alone|-ends)?: .* \\| (.*)$");
    assertThat(lines("  "))
        .allSatisfy(
            line -> {
              Matcher matcher = name.matcher(line);
              if (matcher.find()) {
                assertThat(List.of(matcher.group(1).split(", ", -1)))
                    .as(line)
                    .allMatch(how -> words.contains(how) || sources.contains(how));
              }
            });
    String whole = String.join("\n", lines("  ").toList());
    assertThat(sources).hasSizeGreaterThan(20).allMatch(whole::contains);
  }

  private static Stream<String> lines(String start) {
    return NameListReader.text().lines().filter(l -> l.startsWith(start));
  }

  @Test
  void file_holdsNoAddressOfTheWeb() {
    assertThat(NameListReader.text()).doesNotContainPattern("https?:|www\\.|\\.(com|org|net)\\b");
  }
}
