// The demo scenario, played by a client that was generated from the contract. Prints what came out as JSON.
import { readFile } from 'node:fs/promises';
import {
    Axis,
    ChecksApi,
    Configuration,
    LedgerApi,
    ResponseError,
    ReviewDocumentFromJSON,
    type FramingRequest,
    type RevisionRequest,
} from './client/index.js';

const [basePath, folder] = process.argv.slice(2);
if (basePath === undefined || folder === undefined) {
    throw new Error('node demo.js <address of the service> <folder of the demo documents>');
}
const configuration = new Configuration({ basePath });
const ledger = new LedgerApi(configuration);

async function issue(number: number, reason: string): Promise<RevisionRequest> {
    const text = await readFile(`${folder}/quillmoor-library-${number}.json`, 'utf8');
    return {
        author: 'project engineer',
        reason,
        document: ReviewDocumentFromJSON(JSON.parse(text)),
    };
}

async function statusOf(refused: Promise<unknown>): Promise<number> {
    try {
        await refused;
        return 200;
    } catch (error) {
        if (error instanceof ResponseError) {
            return error.response.status;
        }
        throw error;
    }
}

async function play(): Promise<void> {
    const { projectId } = await ledger.createProject({
        projectRequest: { name: 'Quillmoor Civic Library' },
    });
    const recorded = await ledger.recordRevisionRaw({
        projectId,
        ifNoneMatch: '*',
        revisionRequest: await issue(1, 'Issued for review'),
    });
    const first = await recorded.value();
    const head = recorded.raw.headers.get('ETag');
    if (head === null) {
        throw new Error('a recorded revision has no ETag');
    }
    const fix = await issue(2, 'Corner mullions of level 7 strengthened');
    const second = await ledger.recordRevision({ projectId, ifMatch: head, revisionRequest: fix });
    const stale = await statusOf(
        ledger.recordRevision({ projectId, ifMatch: head, revisionRequest: fix }),
    );
    const comparison = await ledger.compareRevisions({ projectId, base: 1, head: 2 });
    const verification = await ledger.verifyProject({ projectId });

    const member: FramingRequest = {
        axis: Axis.Wind,
        length: '13 ft',
        supports: ['0 ft', { value: 13, unit: 'ft' }],
        tributaryWidth: '5 ft',
        section: { secondMomentOfArea: '6.5 in4', elasticModulus: '10100 ksi' },
        load: { positive: '30 psf', negative: '-35 psf' },
    };
    const framing = await new ChecksApi(configuration).checkFraming({
        framingRequest: member,
        units: 'US',
        trace: 'GOVERNING',
    });

    console.log(
        JSON.stringify({
            verdicts: [first.verdict, second.verdict],
            chained: second.previousHash === first.hash,
            stale,
            changedInputs: comparison.inputs.map((change) => change.pointer),
            intact: verification.intact,
            size: verification.size,
            deflection: framing.maxDeflection,
        }),
    );
}

try {
    await play();
} catch (error) {
    // the problem says more than its status
    if (error instanceof ResponseError) {
        console.error(await error.response.text());
    }
    throw error;
}
