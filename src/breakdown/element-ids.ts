import { slug } from '../base/slug.js';
import { categoryOf } from '../trade/categories.js';
import { categoryOfIdentity, type Identity } from './element-register.js';
import { obtain } from './grouping.js';
import { freeId } from './people-index.js';

/**
 * Gives every thing its id: the slug of its name. Where two would clash, the one that is marked or defined keeps the plain slug, else the
 * only one that is something to get (a bell, and the sound of a bell); the others all take their wearer or category. None inherits the plain id of another when the script changes, so that a price or a decision
 * may lose its thing, with a message, but never move to the wrong one.
 */
export function nameElements(identities: readonly Identity[]): ReadonlyMap<Identity, string> {
  const groups = new Map<string, Identity[]>();
  for (const identity of identities) obtain(groups, slug(identity.name), () => []).push(identity);
  const ids = new Map<Identity, string>();
  const taken = new Set<string>();
  for (const [base, group] of groups) if (group.length === 1) ids.set(group[0] as Identity, freeId(base, taken));
  for (const [base, group] of groups) {
    if (group.length === 1) continue;
    const plain = plainOf(group);
    if (plain) ids.set(plain, freeId(base, taken));
    for (const identity of group) {
      if (identity === plain) continue;
      const same =
        plain !== null && identity.owner === null && categoryOfIdentity(plain) === categoryOfIdentity(identity);
      const wanted = same ? base : `${base}-${tellApart(identity)}`;
      ids.set(identity, freeId(wanted, taken));
    }
  }
  return ids;
}

/** The one that keeps the plain slug: the only declared one, else the only one that is something to get. */
function plainOf(group: readonly Identity[]): Identity | null {
  const declared = group.filter(isDeclared);
  if (declared.length > 0) return declared.length === 1 ? (declared[0] as Identity) : null;
  const bought = group.filter((identity) => categoryOf(categoryOfIdentity(identity)).bought);
  return bought.length === 1 ? (bought[0] as Identity) : null;
}

function isDeclared({ definition, known, owner }: Identity): boolean {
  return definition !== null || known === 'marked' || (known === 'noted' && owner === null);
}

function tellApart(identity: Identity): string {
  return slug(identity.owner ?? categoryOfIdentity(identity));
}
