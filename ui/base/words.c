#include "words.h"

#include <glib/gi18n.h>
#include <langinfo.h>
#include <math.h>
#include <string.h>

#include "check/listing.h"
#include "table/material.h"

/* Options in plain words.  What is missing here is shown as the table has it, which suits "film" or
 * "stick" but not "neck_takes_one". */
static const struct
{
  const char *param, *option, *words;
} choices[] = {
  { "build.handed", "right", N_("Right-handed") },
  { "build.handed", "left", N_("Left-handed") },
  { "scale.square_to", "neck", N_("The neck’s centre line") },
  { "scale.square_to", "strings", N_("The strings") },
  { "fifth.route", "side_peg", N_("Peg in the side") },
  { "fifth.route", "tunnel", N_("Tube under the board") },
  { "strings.slip", "yes", N_("Yes, freely") },
  { "strings.slip", "no", N_("No") },
  { "neck.solve_for", "angle", N_("Neck angle") },
  { "neck.solve_for", "bridge", N_("Bridge height") },
  { "neck.solve_for", "action", N_("Action") },
  { "neck.rod_present", "yes", N_("Yes") },
  { "neck.rod_present", "no", N_("None") },
  { "rim.construction", "segments", N_("Segments") },
  { "rim.construction", "staves", N_("Staves") },
  { "rim.construction", "plies", N_("Bent plies") },
  { "head.material", "film", N_("Film") },
  { "head.material", "skin", N_("Skin") },
  { "head.tension_from", "tension", N_("Value given") },
  { "head.tension_from", "tap_frequency", N_("Tap note heard") },
  { "head.tap_mode", "01", N_("0,1: whole head") },
  { "head.tap_mode", "11", N_("1,1: two halves") },
  { "head.tap_mode", "21", N_("2,1: four quarters") },
  { "hoop.seat", "notches", N_("Notches") },
  { "hoop.seat", "groove", N_("Groove") },
  { "hooks.layout", "even", N_("Even all round") },
  { "hooks.layout", "sides", N_("Even on each side") },
  { "hooks.first", "straddle", N_("Half a step from the neck") },
  { "hooks.first", "neck_takes_one", N_("The neck takes one place") },
  { "joint.kind", "rods", N_("Rods") },
  { "joint.kind", "stick", N_("Stick") },
  { "frets.slots", "across", N_("Right across") },
  { "frets.slots", "own", N_("Each string has its own") },
  { "setup.neck_flex", "yes", N_("Yes") },
  { "setup.neck_flex", "no", N_("No, a stiff neck") },
};

static const struct
{
  const char *part, *words;
} parts[] = {
  { "neck", N_("Neck and fretboard") },
  { "headstock", N_("Headstock") },
  { "joint", N_("Heel joint") },
  { "rim", N_("Rim") },
  { "head", N_("Head") },
  { "hoop", N_("Tension hoop") },
  { "hooks", N_("Hooks and shoes") },
  { "strings", N_("Strings") },
  { "bridge", N_("Bridge") },
  { "setup", N_("Set-up") },
  { "move", N_("Over the seasons") },
  { "finish", N_("Finish") },
};

/* The place-th item of "a|b|c".  New; NULL beyond the end. */
static char *
option_at (const char *options, int place)
{
  g_auto (GStrv) all = g_strsplit (options, "|", -1);

  return place >= 0 && place < (int) g_strv_length (all) ? g_strdup (all[place]) : NULL;
}

int
rw_choice_count (const RwParam *param)
{
  int count = 1;

  for (const char *p = param->options; *p != '\0'; p++)
    count += *p == '|';
  return count;
}

const char *
rw_choice_words (const RwParam *param, int place)
{
  g_autofree char *option = option_at (param->options, place);

  for (guint i = 0; i < G_N_ELEMENTS (choices); i++)
    if (g_str_equal (choices[i].param, param->id) && g_strcmp0 (choices[i].option, option) == 0)
      return _(choices[i].words);
  return option != NULL ? g_intern_string (option) : "";
}

const char *
rw_part_words (const char *part)
{
  for (guint i = 0; i < G_N_ELEMENTS (parts); i++)
    if (g_str_equal (parts[i].part, part))
      return _(parts[i].words);
  return part;
}

static const char *
in_own_language (const char *english)
{
  return _(english);
}

char *
rw_slot_words (RwSlot slot)
{
  return rw_slot_label_in (slot, in_own_language);
}

const char *
rw_severity_words (RwSeverity severity)
{
  switch (severity)
    {
    case RW_STOP:
      return _("Stop");
    case RW_CAUTION:
      return _("Caution");
    case RW_NOTE:
      return C_("severity", "Note");
    }
  g_return_val_if_reached ("");
}

/* What the first of the ids is called, in the language of the window. */
#define NAME "{name}"

char *
rw_finding_text (const RwFinding *finding, RwStyle style)
{
  const char *pattern = _(finding->pattern);
  g_autofree char *name = strstr (pattern, NAME) != NULL ? rw_reading_label (finding->ids[0], in_own_language) : NULL;
  g_autoptr (GString) said = g_string_new (pattern);

  if (name != NULL)
    g_string_replace (said, NAME, name, 0);
  return rw_finding_words (finding, said->str, style);
}

char
rw_locale_decimal (void)
{
  return nl_langinfo (RADIXCHAR)[0] == ',' ? ',' : '.';
}

char *
rw_number_bare (double value, const char *unit, RwStyle style)
{
  return rw_quantity_show (value, unit, style.units, style.decimal);
}

/* A degree sign stands close to its number, all other units stand off. */
static char *
with_unit (const char *number, const char *unit, RwStyle style)
{
  const char *shown = rw_quantity_unit (unit, style.units);

  if (shown == NULL || *shown == '\0')
    return g_strdup (number);
  return g_strconcat (number, g_str_equal (shown, "°") ? "" : "\302\240", shown, NULL);
}

char *
rw_number_words (double value, const char *unit, RwStyle style)
{
  g_autofree char *number = rw_number_bare (value, unit, style);

  return with_unit (number, unit, style);
}

static char *
length_text (double value, RwStyle style)
{
  double sixty_fourths = value / RW_MM_PER_INCH * 64;
  gboolean fraction = style.units == RW_UNITS_FRACTION
                      && fabs (sixty_fourths - round (sixty_fourths)) < 0.05 / RW_MM_PER_INCH * 64;

  return rw_quantity_write (value, "mm", fraction ? RW_UNITS_FRACTION : RW_UNITS_INCH, 2, style.decimal);
}

static char *
lengths_text (const RwLengthList *list, RwStyle style)
{
  GString *text = g_string_new (NULL);

  for (int i = 0; i < list->count; i++)
    {
      g_autofree char *length = length_text (list->at[i], style);

      g_string_append_printf (text, "%s%s", i > 0 ? "; " : "", length);
    }
  return g_string_free (text, FALSE);
}

RwStyle
rw_style_fine (RwStyle style)
{
  if (rw_units_parts (style.units) > 0)
    style.units = RW_UNITS_INCH;
  return style;
}

char *
rw_entry_text (const RwDesign *design, RwParamId id, RwStyle style)
{
  const RwParam *param = rw_param (id);

  if (style.units != RW_UNITS_MM && param->kind == RW_KIND_LENGTH)
    return length_text (rw_design_get (design, id), style);
  if (style.units != RW_UNITS_MM && param->kind == RW_KIND_LENGTH_LIST)
    return lengths_text (G_STRUCT_MEMBER_P (design, param->offset), style);
  return rw_design_write (design, id, style);
}

static char *
wood_list_words (const RwWoodList *list)
{
  GString *text = g_string_new (NULL);

  for (int i = 0; i < list->count; i++)
    g_string_append_printf (text, "%s%s", i > 0 ? ", " : "", _(rw_woods[list->at[i]].label));
  return g_string_free (text, FALSE);
}

/* The mean of readings may have digits without end. */
static char *
hundredths (double value, RwStyle style)
{
  return g_strdelimit (rw_number_write (round (value * 100) / 100), ".", style.decimal);
}

char *
rw_value_bare (const RwDesign *design, RwParamId id, RwStyle style)
{
  const RwParam *param = rw_param (id);
  gconstpointer field = G_STRUCT_MEMBER_P (design, param->offset);

  switch (param->kind)
    {
    case RW_KIND_CHOICE:
      return g_strdup (rw_choice_words (param, *(const int *) field));
    case RW_KIND_WOOD:
      return g_strdup (_(rw_woods[*(const int *) field].label));
    case RW_KIND_METAL:
      return g_strdup (_(rw_metals[*(const int *) field].label));
    case RW_KIND_THREAD:
      return g_strdup (rw_threads[*(const int *) field].id);
    case RW_KIND_WOOD_LIST:
      return wood_list_words (field);
    default:
      if (param->kind == RW_KIND_LENGTH && style.units != RW_UNITS_MM)
        return rw_quantity_write (*(const double *) field, "mm", style.units, 1, style.decimal);
      if (param->kind == RW_KIND_LENGTH || param->kind == RW_KIND_ANGLE)
        return hundredths (*(const double *) field, style);
      return rw_design_write (design, id, style);
    }
}

char *
rw_value_words (const RwDesign *design, RwParamId id, RwStyle style)
{
  const RwParam *param = rw_param (id);
  gboolean has_unit = rw_param_is_number (param) || param->kind == RW_KIND_LENGTH_LIST;
  g_autofree char *text = rw_value_bare (design, id, style);

  return has_unit ? with_unit (text, param->unit, style) : g_steal_pointer (&text);
}

/* An end of a range: as the table has it, or in inches near enough. */
static char *
limit_text (double value, const char *unit, RwStyle style)
{
  if (style.units != RW_UNITS_MM && g_str_equal (unit, "mm"))
    return rw_quantity_write (value, unit, style.units, 1, style.decimal);
  return g_strdelimit (rw_number_write (value), ".", style.decimal);
}

char *
rw_range_words (const RwParam *param, RwStyle style)
{
  g_autofree char *low = NULL, *high = NULL, *with = NULL;

  if (!rw_param_is_number (param) || param->min == param->max)
    return NULL;
  low = limit_text (param->min, param->unit, style);
  high = limit_text (param->max, param->unit, style);
  with = with_unit (high, param->unit, style);
  /* Translators: the least and the greatest value that may be entered, as in "120 to 450 mm" */
  return g_strdup_printf (_("%s to %s"), low, with);
}

RwSubject
rw_subject_of_id (const char *id)
{
  g_autofree char *list = g_strdup (id);
  int place = rw_param_find (id);

  if (place >= 0)
    return (RwSubject){ place, -1 };
  place = rw_slot_find (id);
  if (place >= 0)
    return (RwSubject){ -1, place };

  list[strcspn (list, "[")] = '\0';
  place = rw_param_find (list);
  return place >= 0 ? (RwSubject){ place, -1 } : RW_SUBJECT_NONE;
}

char *
rw_subject_id (RwSubject subject)
{
  if (subject.param >= 0)
    return g_strdup (rw_param (subject.param)->id);
  return subject.slot >= 0 ? rw_slot_id (subject.slot) : NULL;
}
