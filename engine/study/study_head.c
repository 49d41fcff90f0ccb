/* The head under the bridge: its height across the rim through the feet and along the axis, and what each foot
 * carries.  The loads of the feet are laid over each other (feet.h); on a foot and within its capacity radius the
 * head lies against it, and stands as deep as the side view has the bridge, which may be measured.  Where the
 * tension is known from a tap alone, the least and the most that the head may sink go with it: the shape is the
 * same, for it does not depend on the tension. */
#include "study_parts.h"

#include <glib/gi18n-lib.h>

#include "model/feet.h"

#define STEPS 48 /* across the head */
#define FEET 3

typedef struct
{
  const RwDesign *d;
  double   radius, capacity;
  int      count;
  RwPoint2 at[FEET];    /* middle or none, treble, bass */
  double   share[FEET]; /* NaN: a foot stands off the head */
} Feet;

static Feet
place_feet (const RwResult *result)
{
  const RwDesign *d = &result->used;
  double x = d->bridge_offset, y = d->bridge_foot_spread / 2, shares[FEET] = { NAN, NAN, NAN };
  int middle = d->bridge_feet >= 3 ? 1 : 0;
  Feet feet = { d, result->value[RW_HEAD_RADIUS], (d->bridge_foot_length + d->bridge_foot_width) / 4, middle + 2,
                { { x, 0 }, { x, y }, { x, -y } }, { NAN, NAN, NAN } };

  rw_feet_sag (d, feet.radius, 1, shares);
  if (middle == 0)
    {
      feet.at[0] = feet.at[1];
      feet.at[1] = feet.at[2];
    }
  for (int i = 0; i < feet.count; i++)
    feet.share[i] = shares[i];
  return feet;
}

/* What all feet together do at a place, for a unit of load and tension. */
static double
dip (const Feet *feet, RwPoint2 p)
{
  double sum = 0;

  for (int i = 0; i < feet->count; i++)
    {
      double dx = p.x - feet->at[i].x, dy = p.y - feet->at[i].y, away = hypot (dx, dy);
      RwPoint2 edge = { feet->at[i].x + feet->capacity, feet->at[i].y };

      if (away > 0)
        edge = (RwPoint2){ feet->at[i].x + dx * feet->capacity / away, feet->at[i].y + dy * feet->capacity / away };
      sum += feet->share[i] * rw_feet_influence (away < feet->capacity ? edge : p, feet->at[i], feet->radius, 1);
    }
  return sum;
}

static guint
choose_places (const Feet *feet, double *at)
{
  guint count = 0;

  for (int i = 0; i <= STEPS; i++)
    at[count++] = feet->radius * (2.0 * i / STEPS - 1);
  for (int i = 0; i < feet->count; i++)
    if (isfinite (feet->share[i]))
      at[count++] = feet->at[i].y;
  if (fabs (feet->d->bridge_offset) < feet->radius)
    at[count++] = feet->d->bridge_offset;
  return rw_study_sort_places (at, count);
}

/* A line of one panel: how deep the head stands where the feet stand as deep as sag. */
static void
add_profile (RwStudyDraft *draft, const Feet *feet, int panel, double sag, const char *title, const char *label)
{
  double *values = rw_study_column (draft, (RwColumnKind){ "mm", panel, RW_COLUMN_LINE }, g_strdup (title),
                                    g_strdup (label));
  double deepest = rw_feet_sag (feet->d, feet->radius, 1, NULL);

  for (guint row = 0; row < draft->study->rows->len; row++)
    {
      double at = g_array_index (draft->study->rows, RwStudyRow, row).at;
      RwPoint2 p = panel == 0 ? (RwPoint2){ feet->d->bridge_offset, at } : (RwPoint2){ at, 0 };

      if (hypot (p.x, p.y) <= feet->radius * (1 + 1e-9))
        values[row] = -sag * fmin (1, fmax (0, dip (feet, p) / deepest));
    }
}

static void
add_loads (RwStudyDraft *draft, const Feet *feet, double force)
{
  double *loads = rw_study_column (draft, (RwColumnKind){ "N", 0, RW_COLUMN_LOAD },
                                   g_strdup (draft->translate (N_("Load of the foot"))), NULL);

  for (int i = 0; i < feet->count; i++)
    if (isfinite (feet->share[i]))
      loads[rw_study_row_of (draft, feet->at[i].y)] = force * feet->share[i];
}

static void
add_panel (RwStudyDraft *draft, const Feet *feet, int panel)
{
  static const struct
  {
    const char *title[2];
    const char *label;
  } lines[] = {
    { { N_("Across, through the feet"), N_("Along the middle") }, N_("head") },
    { { N_("Across, at the least sag"), N_("Along, at the least sag") }, N_("least") },
    { { N_("Across, at the most sag"), N_("Along, at the most sag") }, N_("most") },
  };
  const double *value = draft->result->value;
  const double sags[] = { value[RW_BRIDGE_SAG], value[RW_BRIDGE_SAG_LOW], value[RW_BRIDGE_SAG_HIGH] };

  for (gsize i = 0; i < G_N_ELEMENTS (lines); i++)
    if (i == 0 || isfinite (sags[i]))
      add_profile (draft, feet, panel, sags[i], draft->translate (lines[i].title[panel]),
                   draft->translate (lines[i].label));
}

void
rw_study_head (RwStudyDraft *draft)
{
  double at[STEPS + 1 + FEET + 1];
  Feet feet = place_feet (draft->result);
  RwStudy *study = draft->study;

  study->same_range = TRUE;
  study->panels[0] = g_strdup (draft->translate (N_("Load of the feet, N; head across the rim")));
  study->panels[1] = g_strdup (draft->translate (N_("Head along the axis")));
  rw_study_places (draft, draft->translate (N_("From the middle")), "mm", at,
                   feet.radius > 0 ? choose_places (&feet, at) : 0);
  add_panel (draft, &feet, 0);
  add_loads (draft, &feet, draft->result->side.force);
  add_panel (draft, &feet, 1);
}
