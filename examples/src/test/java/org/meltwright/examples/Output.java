// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
package org.meltwright.examples;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Captures what a program prints. */
public final class Output {

  /** A program that may fail. */
  @FunctionalInterface
  public interface Program {
    /** Runs the program. */
    void run() throws Exception;
  }

  private Output() {}

  /** Returns what a program prints to standard output, as UTF-8 text. */
  public static synchronized String of(Program program) {
    PrintStream before = System.out;
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (PrintStream capture = new PrintStream(bytes, true, StandardCharsets.UTF_8)) {
      System.setOut(capture);
      program.run();
    } catch (Exception e) {
      throw new AssertionError("the program failed", e);
    } finally {
      System.setOut(before);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }
}
