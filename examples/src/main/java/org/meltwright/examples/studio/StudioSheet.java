// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples.studio;

/** The program. */
public final class StudioSheet {

  private StudioSheet() {}

  /**
   * Runs the program.
   *
   * @param args the studio file
   */
  public static void main(String[] args) {
    System.out.println(String.join(" ", args));
  }
}
