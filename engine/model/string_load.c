#include "string_load.h"

#include "table/note.h"

#define WRAP_KG_M3 8800.0

/* Mass per length, kg/m.  Round-wound: a close helix of wrap wire w = (D - core)/2 on the core,
 * mu = rho pi dc^2/4 + rho_w pi^2 w (dc + w)/4.  A measured mass wins.
 * Source: geometry of a close helix of pitch w on a mean diameter dc + w. */
double
rw_string_mass (const RwString *s)
{
  double wrap_kg_m3 = s->wrap_kg_m3 > 0 ? s->wrap_kg_m3 : WRAP_KG_M3;
  double outer = s->outer_mm * 1e-3, core = s->core_mm * 1e-3;
  double wire = 0.5 * (outer - core), density = rw_wires[s->wire].density_kg_m3;

  if (s->mass_kg_m > 0)
    return s->mass_kg_m;
  if (core <= 0)
    return density * G_PI * outer * outer / 4;
  return density * G_PI * core * core / 4 + wrap_kg_m3 * G_PI * G_PI * wire * (core + wire) / 4;
}

/* T = mu (2 f l)^2, l the speaking length: L, or L 2^(-start/12) for the short string.
 * Source: Mersenne's law; equal temperament on A4, ISO 16:1975. */
void
rw_model_strings (RwModel *m)
{
  const RwStringSet *set = &m->d->strings_set;
  double total = 0;

  for (int i = 1; i <= set->count; i++)
    {
      const RwString *s = &set->at[i - 1];
      double length = m->d->scale_length * 1e-3;

      if (s->is_short)
        length *= exp2 (-m->d->fifth_start_fret / 12);
      m->mass[i] = rw_string_mass (s);
      m->frequency[i] = rw_note_frequency (s->note, m->d->tuning_a4);
      double speed = 2 * m->frequency[i] * length;
      m->tension[i] = rw_settle (m, RW_STRINGS_TENSION + i, m->mass[i] * speed * speed);
      total += m->tension[i];
    }
  rw_settle (m, RW_STRINGS_TENSION_TOTAL, total);
}
