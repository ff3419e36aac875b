// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.safety.heating.rule;

import org.meltwright.core.source.Source;
import org.meltwright.core.source.SourceKind;

/** What the rules rest on, beside common practice. */
final class Sources {

  static final Source STATE_ENCAUSTICS =
      source(
          "washington-encaustics",
          "Washington State Department of Health, Art Hazards: Encaustics",
          SourceKind.WEB_PAGE);
  static final Source COUNTY_ENCAUSTIC =
      source(
          "king-county-encaustic",
          "King County hazardous waste programme, Art Hazards: Encaustic",
          SourceKind.WEB_PAGE);
  static final Source BEESWAX_RECORD =
      source(
          "cameo-beeswax",
          "CAMEO (Museum of Fine Arts Boston), record Beeswax",
          SourceKind.MUSEUM_RECORD);
  static final Source STUDIO_GUIDE =
      Source.of(
              "kay-1983",
              "R. Kay, The Painter's Guide to Studio Methods and Materials",
              SourceKind.HANDBOOK)
          .at("pp. 28, 162-165")
          .ofYear("1983");
  static final Source SCHOOL_GUIDELINES =
      source(
          "oehha-schools",
          "OEHHA California, Art and craft materials in schools",
          SourceKind.REGULATION);
  static final Source WAX_FIRES =
      source(
          "waldeck-frankenberg",
          "Landkreis Waldeck-Frankenberg, civil protection: wax and oil fires",
          SourceKind.WEB_PAGE);
  static final Source OILY_RAG_CANS =
      source("school-oily-rags", "A school workshop sheet on oily-rag cans", SourceKind.WEB_PAGE);
  static final Source IRON_DOTS =
      source("iron-dots", "A household guide to the dots on irons", SourceKind.WEB_PAGE);
  static final Source MATERIAL_FIGURES =
      source(
          "material-figures",
          "The figures of each material, each with its own source",
          SourceKind.CALCULATED);

  static final Source MICROWAVED_WAX =
      Source.of(
              "eplasty-2011",
              "Depilatory Wax Burns: Experience and Investigation, Eplasty 11:e25",
              SourceKind.PAPER)
          .ofYear("2011");

  static final Source GREASY_CLOTH =
      source(
          "emollients-mhra",
          "Psoriasis Association quoting MHRA, Emollient residue potential fire risk",
          SourceKind.WEB_PAGE);

  static final Source HEAT_LAMPS =
      source(
          "osu-heat-lamps",
          "Ohio State University Extension, Using heat lamps? Proceed with caution",
          SourceKind.WEB_PAGE);

  static final Source CABLE_REEL =
      source(
          "east-sussex-reel",
          "East Sussex Fire and Rescue Service, Cable drum",
          SourceKind.WEB_PAGE);

  static final Source EXTENSION_LEADS =
      source(
          "rospa-leads",
          "RoSPA Northern Ireland, Electricity and You: extension leads",
          SourceKind.WEB_PAGE);

  static final Source PAN_FIRES =
      source(
          "bedfordshire-pan-fires",
          "Bedfordshire Fire and Rescue Service, Chip Pan Fires",
          SourceKind.WEB_PAGE);

  static final Source SCHOOL_BATIK =
      source("school-batik", "A school risk assessment for batik", SourceKind.WEB_PAGE);

  private Sources() {}

  private static Source source(String id, String title, SourceKind kind) {
    return Source.of(id, title, kind);
  }
}
