#include "steps_file.h"

#include <math.h>

#include "check/listing.h"
#include "making/backwards.h"
#include "making/step.h"
#include "csv_text.h"
#include "json_writer.h"

typedef struct
{
  const RwProject *project;
  const RwAnswer  *answer;
  RwUnits          units;
} Job;

/* One step of the build, with all that is said of it. */
typedef struct
{
  const RwStepInfo *info;
  RwStepState       state;
  guint             waits_for;
  const RwMadeStep *made; /* NULL: not made */
  char            **given, **yields;
} Item;

static Item
item_of (const Job *job, const RwStepInfo *info)
{
  Item item = { .info = info, .made = rw_made_find (job->project->made, info->step) };

  item.state = rw_step_state (info, job->project->made, &job->answer->now.used, &item.waits_for);
  item.given = rw_step_given (info, &job->answer->now);
  item.yields = rw_step_yields (info, &job->answer->now);
  return item;
}

static void
item_clear (Item *item)
{
  g_strfreev (item->given);
  g_strfreev (item->yields);
}

/* The steps in a set of bits, by name; NULL-ended. */
static const char **
names_of (guint bits)
{
  const char **names = g_new0 (const char *, RW_STEP_COUNT + 1);
  int count = 0;

  for (RwStep step = 0; step < RW_STEP_COUNT; step++)
    if (bits & RW_STEP_BIT (step))
      names[count++] = rw_step_name (step);
  return names;
}

/* ---- text ---- */

static const char *
in_english (const char *english)
{
  return english;
}

static void
append_words (GString *out, const char *what, const char *words)
{
  if (words != NULL && *words != '\0')
    g_string_append_printf (out, "        %-12s %s\n", what, words);
}

static const char *
origin_of (const RwReadingRow *row)
{
  return isfinite (row->measured) ? ", measured" : isfinite (row->made) ? ", made" : "";
}

static void
append_readings (GString *out, const Job *job, const char *what, char **ids)
{
  for (int i = 0; ids[i] != NULL; i++)
    {
      RwReadingRow row;

      if (!rw_listing_find (ids[i], job->project, &job->answer->now, &job->answer->planned, &row))
        continue;

      g_autofree char *label = rw_reading_label (ids[i], in_english);
      g_autofree char *value = rw_quantity_show (row.value, row.unit, job->units, '.');

      g_string_append_printf (out, "        %-12s %s: %s %s  %s%s\n", what, label, value,
                              rw_quantity_unit (row.unit, job->units), ids[i], origin_of (&row));
    }
}

static void
append_text_item (GString *out, const Job *job, const Item *item, int number)
{
  g_autofree const char **names = names_of (item->waits_for);
  g_autofree char *waits = g_strjoinv (", ", (char **) names);

  g_string_append_printf (out, "%s%3d  %-9s %s", number > 1 ? "\n" : "", number,
                          rw_step_state_name (item->state), rw_step_info_title (item->info));
  if (item->made != NULL && item->made->date[0] != '\0')
    g_string_append_printf (out, ", %s", item->made->date);
  g_string_append_c (out, '\n');
  append_words (out, "waits for:", waits);
  append_words (out, "known first:", item->info->needs);
  append_words (out, "do:", item->info->work);
  append_words (out, "take care:", item->info->caution);
  append_readings (out, job, "given:", item->given);
  append_readings (out, job, "read off:", item->yields);
}

/* ---- CSV ---- */

static void
append_csv_item (GString *out, const Item *item)
{
  g_autofree const char **names = names_of (item->waits_for);
  g_autofree char *waits = g_strjoinv (" ", (char **) names);
  g_autofree char *given = g_strjoinv (" ", item->given), *yields = g_strjoinv (" ", item->yields);
  const char *const fields[] = { rw_step_name (item->info->step), rw_step_info_title (item->info),
                                 rw_step_state_name (item->state), item->made != NULL ? item->made->date : "",
                                 waits, item->info->needs, item->info->work,
                                 item->info->caution != NULL ? item->info->caution : "", given, yields, NULL };

  rw_csv_row (out, fields);
}

/* ---- JSON ---- */

static void
append_json_item (RwJsonWriter *writer, const Item *item)
{
  g_autofree const char **names = names_of (item->waits_for);

  rw_json_next (writer);
  rw_json_begin_line (writer, '{');
  rw_json_text (writer, "step", rw_step_name (item->info->step));
  rw_json_text (writer, "title", rw_step_info_title (item->info));
  rw_json_text (writer, "state", rw_step_state_name (item->state));
  rw_json_text (writer, "made", item->made != NULL ? item->made->date : NULL);
  rw_json_texts (writer, "waits_for", names);
  rw_json_text (writer, "needs", item->info->needs);
  rw_json_text (writer, "work", item->info->work);
  rw_json_text (writer, "caution", item->info->caution);
  rw_json_texts (writer, "given", (const char *const *) item->given);
  rw_json_texts (writer, "yields", (const char *const *) item->yields);
  rw_json_end (writer, '}');
}

/* ---- worked backwards ---- */

static void
append_backwards_text (GString *out, const RwBackwards *b, RwUnits units)
{
  g_autofree char *id = rw_slot_id (b->slot), *measured = rw_quantity_show (b->measured, "mm", units, '.');
  g_autofree char *bridge = rw_quantity_show (b->wanted_bridge, "mm", units, '.');
  g_autofree char *shim = rw_quantity_show (fabs (b->shim), "mm", units, '.');
  const char *unit = rw_quantity_unit ("mm", units);

  g_string_append_printf (out,
                          "\nWorked backwards from %s, %s %s: the neck stands at %.2f°, and %.2f° is wanted. A bridge "
                          "of %s %s sets it right, or a shim of %s %s at the %s end of the heel.\n",
                          id, measured, unit, b->angle, b->wanted_angle, bridge, unit, shim, unit,
                          b->shim >= 0 ? "head" : "cap");
}

static void
append_backwards_json (RwJsonWriter *writer, const RwBackwards *b)
{
  g_autofree char *id = rw_slot_id (b->slot);

  rw_json_begin (writer, '{');
  rw_json_text (writer, "id", id);
  rw_json_value (writer, "measured", b->measured);
  rw_json_value (writer, "angle", b->angle);
  rw_json_value (writer, "wanted_angle", b->wanted_angle);
  rw_json_value (writer, "bridge", b->bridge);
  rw_json_value (writer, "wanted_bridge", b->wanted_bridge);
  rw_json_value (writer, "shim", b->shim);
  rw_json_end (writer, '}');
}

/* ---- the whole ---- */

/* After the steps: what a measured string height says of the neck.  JSON has null where none is measured. */
static void
append_end (RwJsonWriter *writer, const RwProject *project, RwListFormat format, RwUnits units)
{
  RwBackwards backwards;
  gboolean found = rw_backwards (project, &backwards);

  if (format == RW_LIST_TEXT && found)
    append_backwards_text (writer->out, &backwards, units);
  if (format != RW_LIST_JSON)
    return;
  rw_json_end (writer, ']');
  rw_json_name (writer, "backwards");
  if (found)
    append_backwards_json (writer, &backwards);
  else
    g_string_append (writer->out, "null");
  rw_json_end (writer, '}');
  g_string_append_c (writer->out, '\n');
}

char *
rw_steps_write (const RwProject *project, const RwAnswer *answer, RwListFormat format, RwUnits units)
{
  static const char *const header[] = { "step", "title", "state", "made", "waits_for", "needs", "work", "caution",
                                        "given", "yields", NULL };
  const Job job = { project, answer, units };
  const RwStepInfo *steps[RW_STEP_COUNT];
  int count = rw_steps_of (&answer->now.used, steps);
  RwJsonWriter writer = rw_json_writer (g_string_new (NULL));

  if (format == RW_LIST_CSV)
    rw_csv_row (writer.out, header);
  if (format == RW_LIST_JSON)
    {
      rw_json_begin (&writer, '{');
      rw_json_name (&writer, "steps");
      rw_json_begin (&writer, '[');
    }
  for (int i = 0; i < count; i++)
    {
      Item item = item_of (&job, steps[i]);

      if (format == RW_LIST_TEXT)
        append_text_item (writer.out, &job, &item, i + 1);
      else if (format == RW_LIST_CSV)
        append_csv_item (writer.out, &item);
      else
        append_json_item (&writer, &item);
      item_clear (&item);
    }
  append_end (&writer, project, format, units);
  return g_string_free (writer.out, FALSE);
}
