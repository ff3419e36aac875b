// Copyright the Meltwright contributors. SPDX-License-Identifier: Apache-2.0
/**
 * May this be heated, here, with that — and what to do now.
 *
 * <ol>
 *   <li>{@link org.meltwright.safety.heating.HeatingPlan} — what is to be heated, with what, in
 *       what, by whom and where, as far as it is stated.
 *   <li>{@link org.meltwright.safety.heating.HeatingRules} — the rules, and those an app adds.
 *   <li>{@link org.meltwright.safety.heating.HeatingReview} — findings, what was not assessed, and
 *       the cautions that always hold; never an all-clear.
 *   <li>{@link org.meltwright.safety.heating.TemperatureTable} — the one temperature table.
 *   <li>{@link org.meltwright.safety.heating.HeatingReading} — what to do about a reading, now and
 *       later.
 *   <li>{@link org.meltwright.safety.heating.HeatingPlanDraft} — how a plan is written down; its
 *       room and its people by themselves are a {@link org.meltwright.safety.heating.RoomDraft} and
 *       a {@link org.meltwright.safety.heating.PeopleDraft}.
 * </ol>
 *
 * <p>A review leaves as plain data in {@link org.meltwright.safety.heating.HeatingReviewData}:
 * temperatures in degrees Celsius, margins in kelvins, as the names say; what is absent is null.
 *
 * <p>A screening aid: local codes, data sheets and licensed practice come first.
 */
@NullMarked
package org.meltwright.safety.heating;

import org.jspecify.annotations.NullMarked;
