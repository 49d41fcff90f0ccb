#include "string_load.h"

#include "table/note.h"
#include "slots.h"

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

double
rw_string_wire (const RwString *string)
{
  return string->core_mm > 0 ? string->core_mm : string->outer_mm;
}

/* B = pi^2 E I/(T l^2): H. Fletcher, JASA 36 (1964) 203, f_n = n f sqrt(1 + B n^2), pinned ends.  length: mm. */
static void
wire_rows (RwModel *m, int i, const RwString *string, double length)
{
  double d = rw_string_wire (string), tension = m->tension[i];
  double modulus = 1000 * rw_wire_modulus (string->wire, m->d->strings_modulus);
  double stress = rw_settle (m, RW_STRINGS_STRESS + i, tension / (G_PI * d * d / 4));
  double b = G_PI * G_PI * modulus * (G_PI * d * d * d * d / 64) / (tension * length * length);

  rw_settle (m, RW_STRINGS_STRENGTH_SHARE + i, 100 * stress / rw_wire_strength (string->wire, d));
  b = 1e-6 * rw_settle (m, RW_STRINGS_STIFFNESS + i, 1e6 * b);
  rw_settle (m, RW_STRINGS_PARTIAL + i, 600 * log2 ((1 + 100 * b) / (1 + b)));
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
        length *= exp2 (-rw_fret_cents (m->d, (int) m->d->fifth_start_fret) / 1200);
      m->mass[i] = rw_string_mass (s);
      m->frequency[i] = rw_note_frequency (s->note, m->d->tuning_a4);
      double speed = 2 * m->frequency[i] * length;
      m->tension[i] = rw_settle (m, RW_STRINGS_TENSION + i, m->mass[i] * speed * speed);
      total += m->tension[i];
      wire_rows (m, i, s, 1000 * length);
    }
  rw_settle (m, RW_STRINGS_TENSION_TOTAL, total);
}
