// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.naming;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The reference page shows the list. To write it anew: {@code mvn -pl safety -am test
 * -Dtest=HazardNamesPageTest -Dsurefire.failIfNoSpecifiedTests=false -Dpages.write=true}.
 */
class HazardNamesPageTest {

  private static final Path PAGE = Path.of("..", "docs", "reference", "hazard-names.md");

  @Test
  void page_showsTheList() throws IOException {
    String page = NamePages.page();
    if (Boolean.getBoolean("pages.write")) {
      Files.writeString(PAGE, page, StandardCharsets.UTF_8);
    }
    assertThat(PAGE).content(StandardCharsets.UTF_8).isEqualTo(page);
  }
}
