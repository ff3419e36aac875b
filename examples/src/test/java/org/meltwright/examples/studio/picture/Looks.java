// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.jsoup.nodes.Element;
import org.meltwright.examples.studio.page.Block.Picture;
import org.meltwright.examples.studio.page.Lettering;

/** What holds for every picture. */
final class Looks {

  /** Room that words take, at most. */
  private record Box(String text, double left, double right, double top, double bottom) {

    static Box of(Element text) {
      String words = text.wholeText();
      boolean bold = text.hasClass("strong");
      double width = bold ? Lettering.boldWidth(words) : Lettering.width(words);
      double x = Samples.number(text, "x");
      double left = text.hasClass("end") ? x - width : text.hasClass("middle") ? x - width / 2 : x;
      double y = Samples.number(text, "y");
      return new Box(words, left, left + width, y - 9, y + 3);
    }

    boolean overlaps(Box other) {
      return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }
  }

  private Looks() {}

  /** Words keep clear of each other and of the edges, and each picture tells what it is. */
  static void arePicturesOfOurs(Picture picture) {
    Element svg = Samples.drawn(picture);
    String[] view = svg.attr("viewBox").split(" ", -1);
    double width = Double.parseDouble(view[2]);
    double height = Double.parseDouble(view[3]);
    List<Box> boxes = new ArrayList<>();
    for (Element text : svg.select("text")) {
      Box box = Box.of(text);
      assertThat(boxes.stream().filter(box::overlaps)).as("overlaps %s", box).isEmpty();
      assertThat(box.left >= -0.02 && box.right <= width + 0.02 && box.bottom <= height)
          .as("%s in %s × %s", box, width, height)
          .isTrue();
      boxes.add(box);
    }
    assertThat(boxes).isNotEmpty();
    assertThat(svg.attr("role")).isEqualTo("img");
    assertThat(svg.attr("aria-labelledby")).isEqualTo("p-title p-desc");
    assertThat(svg.select("title, desc").eachText()).hasSize(2).allMatch(t -> !t.isBlank());
    assertThat(picture.alternative()).isNotBlank().doesNotContain("NaN", "Infinity", "null");
    assertThat(svg.select("[style], [fill], [stroke], script, image, use")).isEmpty();
  }
}
