// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.core.source;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SourceTest {

  private static final Source BOOK =
      Source.of("book", "A Book", SourceKind.HANDBOOK).at("3rd ed.").ofYear("1911");

  @Test
  void at_place_standsBehindTheEdition() {
    assertThat(BOOK.at("table 4").locator()).hasValue("3rd ed., table 4");
    assertThat(BOOK.at("table 4").citation()).isEqualTo("A Book, 3rd ed., table 4 (1911)");
    assertThat(Source.COMMON_PRACTICE.at("Europe").locator()).hasValue("Europe");
  }

  @Test
  void citation_leavesOutWhatIsNotStated() {
    assertThat(Source.COMMON_PRACTICE.citation()).isEqualTo("Common practice of the trade");
    assertThat(BOOK.citation()).isEqualTo("A Book, 3rd ed. (1911)");
  }

  @Test
  void sourced_copies_keepWhatWasSaidBefore() {
    Sourced<String> figure =
        Sourced.of("62", BOOK, Knowledge.READ)
            .withNote("of the melt")
            .preferred("it is the newest")
            .barredFromRules("a typing error");
    assertThat(figure.value()).isEqualTo("62");
    assertThat(figure.note()).hasValue("of the melt");
    assertThat(figure.preferredBecause()).hasValue("it is the newest");
    assertThat(figure.barredBecause()).hasValue("a typing error");
    assertThat(figure.isUsableForRules()).isFalse();
    assertThat(figure.source()).isEqualTo(BOOK);
    assertThat(figure.knowledge()).isEqualTo(Knowledge.READ);
    assertThat(Sourced.of("62", BOOK, Knowledge.READ).isUsableForRules()).isTrue();
  }

  @Test
  void evidence_isRankedStrongestFirst() {
    assertThat(Knowledge.READ).isLessThan(Knowledge.REMEMBERED);
    assertThat(SourceKind.STANDARD).isLessThan(SourceKind.WEB_PAGE);
  }
}
