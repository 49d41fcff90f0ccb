#include "measured.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

#include "table/param_text.h"

/* No length, force or count of a banjo comes near. */
#define VALUE_MAX 1e6

#define COURSES_ID "rim.course_thickness"

/* What an id stands for.  -1: not that. */
typedef struct
{
  int param;
  int slot;
  int course; /* from 0 */
} Place;

void
rw_measured_init (RwMeasured *measured)
{
  for (guint i = 0; i < G_N_ELEMENTS (measured->param); i++)
    measured->param[i] = NAN;
  for (guint i = 0; i < G_N_ELEMENTS (measured->course_thickness); i++)
    measured->course_thickness[i] = NAN;
  for (guint i = 0; i < G_N_ELEMENTS (measured->slot); i++)
    measured->slot[i] = measured->held_slot[i] = NAN;
  measured->rim_out_of_round = NAN;
  memset (measured->holds_param, 0, sizeof measured->holds_param);
  memset (measured->holds_slot, 0, sizeof measured->holds_slot);
  memset (&measured->held, 0, sizeof measured->held);
}

void
rw_measured_hold_param (RwMeasured *measured, RwParamId id, const RwDesign *from)
{
  if (rw_param_is_number (rw_param (id)))
    measured->param[id] = rw_design_get (from, id);
  else
    rw_design_copy (&measured->held, from, id);
  measured->holds_param[id] = TRUE;
}

void
rw_measured_hold_slot (RwMeasured *measured, RwSlot slot, double value)
{
  measured->slot[slot] = measured->held_slot[slot] = value;
  measured->holds_slot[slot] = TRUE;
}

/* The course that an id with an index names, from 0, or -1. */
static int
course_of (const char *id)
{
  for (int i = 0; i < RW_COURSES_MAX; i++)
    {
      g_autofree char *written = g_strdup_printf (COURSES_ID "[%d]", i + 1);

      if (strcmp (id, written) == 0)
        return i;
    }
  return -1;
}

static Place
find (const char *id)
{
  return (Place){ rw_param_find (id), rw_slot_find (id), course_of (id) };
}

static const char *
unit_of (Place place)
{
  if (place.course >= 0)
    return rw_param (RW_P_rim_course_thickness)->unit;
  if (place.param >= 0 && rw_param_is_number (rw_param ((RwParamId) place.param))
      && !rw_param_is_limit (rw_param ((RwParamId) place.param)))
    return rw_param ((RwParamId) place.param)->unit;
  return place.slot >= 0 ? rw_slot_dim ((RwSlot) place.slot)->unit : NULL;
}

const char *
rw_measurable_unit (const char *id)
{
  return strcmp (id, COURSES_ID) == 0 ? rw_param (RW_P_rim_course_thickness)->unit : unit_of (find (id));
}

static gboolean
refuse_id (Place place, const char *id, GError **error)
{
  if (strcmp (id, COURSES_ID) == 0)
    g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_VALUE,
                 _("“%s” needs the number of the course, as in %s[1]"), id, id);
  else if (place.param >= 0)
    g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_VALUE, _("“%s” is chosen, not measured"), id);
  else
    g_set_error (error, RW_PARAM_ERROR, RW_PARAM_ERROR_UNKNOWN,
                 _("There is no parameter and no dimension “%s”"), id);
  return FALSE;
}

static const char *
in_own_language (const char *english)
{
  return _(english);
}

static gboolean
accepts (Place place, double value, GError **error)
{
  const RwParam   *courses = rw_param (RW_P_rim_course_thickness);
  const RwStyle    style = RW_STYLE_FILE;
  const RwRange    anything = { -VALUE_MAX, VALUE_MAX, unit_of (place) };
  g_autofree char *label = NULL;

  if (place.course >= 0)
    return rw_range_accepts (&rw_course_range, value, style, _(courses->label), error);
  if (place.param >= 0)
    return rw_param_accepts (rw_param ((RwParamId) place.param), value, style, error);
  label = rw_slot_label_in ((RwSlot) place.slot, in_own_language);
  return rw_range_accepts (&anything, value, style, label, error);
}

/* Where an id is both a parameter and a dimension it is one value. */
static void
put (RwMeasured *measured, Place place, double value)
{
  if (place.param >= 0)
    measured->param[place.param] = value;
  if (place.slot >= 0)
    measured->slot[place.slot] = value;
  if (place.course >= 0)
    measured->course_thickness[place.course] = value;
}

gboolean
rw_measured_set (RwMeasured *measured, const char *id, double value, GError **error)
{
  Place place = find (id);

  if (unit_of (place) == NULL)
    return refuse_id (place, id, error);
  if (!accepts (place, value, error))
    return FALSE;
  put (measured, place, value + 0.0); /* -0 is 0 */
  return TRUE;
}
